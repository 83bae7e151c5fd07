package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.SmallFleet;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.PriceLines.Between;
import depot.optimizer.sweep.SweepCase.Part;
import depot.optimizer.sweep.change.Change;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases between others that differ from them in one price only. */
class BetweenPricesTest {

    private static final String PRICES = """
            "lines": [{"name": "p", "change": "%s", "values": [0.25, 0.5, 0.75, 1.5, 2, 3]}]
            """;

    private static SweepCase priced(String... values) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            ChangeKind kind = i == 0 ? ChangeKind.ELECTRICITY_PRICE : ChangeKind.DEMAND_PRICE;
            if (!values[i].equals("1")) {
                changes.add(new Change(kind, "", new BigDecimal(values[i])));
            }
        }
        return new SweepCase(Part.CASE, "cases", String.join(" ", values), Purchases.ANEW, changes);
    }

    private static List<Map<Integer, Between>> waves(List<SweepCase> cases) {
        return new PriceLines(cases, Collections.nCopies(cases.size(), true)).waves();
    }

    @Test
    void aLineHasItsEndsFirstAndTheBasePlanInIt() {
        List<Map<Integer, Between>> waves =
                waves(List.of(priced("0.5"), priced("0.75"), priced("1.5"), priced("2"), priced("3")));

        assertThat(waves)
                .containsExactly(Map.of(
                        1, new Between(0, PriceLines.BASE, 0.5),
                        2, new Between(PriceLines.BASE, 4, 0.25),
                        3, new Between(PriceLines.BASE, 4, 0.5)));
    }

    @Test
    void aGridHasItsCornersFirstThenItsEdgesThenItsMiddle() {
        List<SweepCase> cases = List.of(
                priced("2", "2"),
                priced("2", "3"),
                priced("2", "4"),
                priced("3", "2"),
                priced("3", "3"),
                priced("3", "4"),
                priced("4", "2"),
                priced("4", "3"),
                priced("4", "4"));

        List<Map<Integer, Between>> waves = waves(cases);

        assertThat(waves).hasSize(2);
        assertThat(waves.get(0).keySet()).containsExactlyInAnyOrder(1, 3, 5, 7);
        assertThat(waves.get(1)).containsOnlyKeys(4);
    }

    @Test
    void whatIsNoPriceOrPriceOfNothingStandsByItself() {
        SweepCase kept = new SweepCase(
                Part.CASE, "cases", "kept", Purchases.KEPT, priced("1.5").changes());
        SweepCase hours = new SweepCase(
                Part.CASE,
                "cases",
                "hours",
                Purchases.ANEW,
                List.of(new Change(ChangeKind.WORK_HOURS, "", new BigDecimal("1.5"))));

        assertThat(waves(List.of(priced("0"), priced("0.5"), kept, hours))).isEmpty();
        assertThat(new PriceLines(List.of(priced("0.5"), priced("0.75")), List.of(true, false)).waves())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"electricity_price", "item_price", "building_price", "all_money"})
    void boundsAndPlansHoldForWhatASearchOfItsOwnFinds(String kind) {
        ScenarioText text = SmallFleet.seasons();
        SweepResult wide = SweepText.run(gap(text, "0.2"), PRICES.formatted(kind));
        SweepResult narrow = SweepText.run(gap(text, "0.0001"), PRICES.formatted(kind));

        assertThat(wide.cases()).anyMatch(each -> !each.unsearched().isEmpty());
        for (int i = 0; i < wide.cases().size(); i++) {
            FleetOutcome found = wide.cases().get(i).fleet().orElseThrow();
            FleetOutcome best = narrow.cases().get(i).fleet().orElseThrow();
            assertThat(found.proven()).isTrue();
            assertThat(found.gap()).isLessThanOrEqualTo(0.2 + 1e-9);
            assertThat(found.bound()).isLessThanOrEqualTo(best.cost() * (1 + 1e-6));
            assertThat(found.cost()).isGreaterThanOrEqualTo(best.bound() * (1 - 1e-6));
        }
    }

    @Test
    void aCaseWithinTheGapIsNotSearchedAndSaysWhosePlanItHas() {
        SweepResult sweep = SweepText.run(gap(SmallFleet.lunch(), "0.2"), PRICES.formatted("electricity_price"));

        CaseResult between = sweep.cases().get(3);
        assertThat(between.unsearched()).isEqualTo(between.touched());
        assertThat(between.plansOf()).containsOnlyKeys(between.touched());
        assertThat(between.plansOf().values())
                .isSubsetOf(
                        Exchange.BASE.name(), sweep.cases().get(5).sweepCase().name());
        assertThat(sweep.cases().get(0).unsearched()).isEmpty();
        assertThat(sweep.cases().get(5).unsearched()).isEmpty();
    }

    private static Scenario gap(ScenarioText text, String gap) {
        return Planned.load(text.setting("solve", "{\"gap\": %s, \"threads\": 2}".formatted(gap)));
    }
}
