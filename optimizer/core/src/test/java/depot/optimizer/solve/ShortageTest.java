package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan that cannot meet a day says so, prices it, and names what would cure it. */
class ShortageTest {

    private static final double CENT = 0.005;
    private static final double WATT_HOUR = 0.01;
    private static final double ANNUITY = (1 - Math.pow(1.05, -10)) / 0.05;

    private static List<ExplainedShortage> explain(Planned planned) {
        return ShortageCure.explain(planned.problem(), planned.plan());
    }

    @Test
    void aCheapShortageIsPreferredToBuying() {
        Planned planned = Planned.of(ScenarioText.tiny().setting("shortage_cost_per_kwh", "0.01"))
                .replayed();

        assertThat(planned.shortWh()).isCloseTo(800, within(WATT_HOUR));
        assertThat(planned.packs()).isZero();
        assertThat(planned.cost(Category.SHORTAGE)).isCloseTo(0.8 * 150 * 0.01 * ANNUITY, within(CENT));
    }

    @Test
    void aDearShortageIsAvoided() {
        Planned.of(ScenarioText.tiny().setting("shortage_cost_per_kwh", "40")).proven();
    }

    @Test
    void shortageIsAvoidedWhereItIsForbiddenAndAvoidable() {
        assertThat(Planned.of(ScenarioText.tiny()).proven().cost(Category.SHORTAGE))
                .isZero();
    }

    /** A pack more would cost this depot four times as much as the penalty of the 0.7 Wh that it would otherwise lack. */
    @Test
    void notEvenAFractionOfAWattHourIsLackingWhereThatIsForbidden() {
        Scenario scenario = FleetGenerator.generate(GeneratorSettings.DEFAULT.withDepots(1), 21);

        assertThat(Planned.of(scenario).shortWh()).isZero();
    }

    @Test
    void aPlanWithoutShortageNeedsNoExplanation() {
        assertThat(explain(Planned.of(ScenarioText.tiny()))).isEmpty();
    }

    @Test
    void aShortageIsListedForEverySeasonDayWithItsCrewTripAndFamily() {
        ScenarioText text = ScenarioText.tiny().replace("crews.csv", "8,60", "1,60");
        List<ExplainedShortage> rows = explain(Planned.of(text).replayed());

        assertThat(rows).hasSize(5);
        ExplainedShortage row = rows.get(0);
        assertThat(row.depot()).isEqualTo("north");
        assertThat(row.crew()).isEqualTo("crew-1");
        assertThat(row.trip()).isEqualTo(1);
        assertThat(row.family()).isEqualTo("blue");
        assertThat(row.wattHours()).isCloseTo(350, within(WATT_HOUR));
        assertThat(row.daysPerYear()).isEqualTo(30);
        assertThat(row.presentCost()).as("forbidden: no price").isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "crews.csv; 8,60; 8,4; payload; crew-1: 1 kg more",
                "depots.csv; 63,10; 63,0; wall and bench places; north: 1 places more",
                "depots.csv; 3,63; 3,1; supply; north: 1 A more"
            })
    void theLimitInTheWayIsNamedWithTheLeastChange(
            String table, String old, String limited, String limit, String cure) {
        ExplainedShortage row = explain(Planned.of(ScenarioText.tiny().replace(table, old, limited)))
                .get(0);

        assertThat(row.limit()).contains(limit);
        assertThat(row.cure()).contains(cure);
        assertThat(row.curePresentCost()).isPresent();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "crews.csv; 8,60; 1,60; pack places; crew-1: 1 pack places more",
                "circuits.csv; 1,16,4; 1,16,0; outlets; north-1: 1 outlets more",
                "circuits.csv; 1,16,4; 1,3,4; breakers; north-1: 1 A more"
            })
    void limitsThatBoundVariablesAreNamedToo(String table, String old, String limited, String limit, String cure) {
        theLimitInTheWayIsNamedWithTheLeastChange(table, old, limited, limit, cure);
    }

    @Test
    void theCureDoesCureAndCostsWhatItSays() {
        ScenarioText limited =
                ScenarioText.tiny().replace("crews.csv", "8,60", "8,4").setting("shortage_cost_per_kwh", "40");
        Planned shorted = Planned.of(limited).replayed();
        ExplainedShortage row = explain(shorted).get(0);
        Planned cured = Planned.of(limited.replace("crews.csv", "8,4", "8,5")).proven();

        double costMore = cured.cost() - (shorted.cost() - shorted.cost(Category.SHORTAGE));
        assertThat(row.curePresentCost().orElseThrow()).isCloseTo(costMore, within(0.01 * cured.cost()));
        assertThat(row.presentCost().orElseThrow()).isCloseTo(0.35 * 30 * 40 * ANNUITY, within(CENT));
    }

    @Test
    void whereNoLimitIsInTheWayItSaysSo() {
        // No charger takes a pack before the next morning: no limit of the depot's cures that.
        ScenarioText slow = ScenarioText.tiny().replace("charge_times.csv", "42,60", "1000,1200");
        Planned planned = Planned.of(slow);

        assertThat(planned.covered()).isFalse();
        assertThat(explain(planned).get(0).cure()).contains("no change of these limits cures it");
    }
}
