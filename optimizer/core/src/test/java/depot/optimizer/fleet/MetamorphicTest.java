package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Changes of a fleet whose effect on its cost is known beforehand. */
class MetamorphicTest {

    /** Relative. */
    private static final double SAME_COST = 1e-6;

    static Stream<ScenarioText> fleets() {
        return Stream.of(SmallFleet.lunch(), SmallFleet.seasons());
    }

    private static double cost(ScenarioText text) {
        FleetResult result = new FleetPlanner(ProgressListener.SILENT).plan(Planned.load(text), new TreeMap<>());
        assertThat(result.replay().violations()).isEmpty();
        assertThat(result.replay().proven()).isTrue();
        return result.plan().certificate().cost();
    }

    private static void assertCosts(ScenarioText text, double expected) {
        assertThat(cost(text)).isCloseTo(expected, within(SAME_COST * expected));
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void theOrderOfRowsMakesNoDifference(ScenarioText text) {
        assertCosts(SmallFleet.reversed(text), cost(text));
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void namesMakeNoDifference(ScenarioText text) {
        ScenarioText renamed = SmallFleet.renamed(text, "north", "zz-yard");
        renamed = SmallFleet.renamed(renamed, "crew-1", "z1");
        renamed = SmallFleet.renamed(renamed, "pack-500", "zebra");
        renamed = SmallFleet.renamed(renamed, "duo", "a-first");

        assertCosts(renamed, cost(text));
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void tenfoldMoneyIsTenfoldCost(ScenarioText text) {
        assertCosts(SmallFleet.tenfold(text), 10 * cost(text));
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void aDepotWithoutCrewsCostsNothing(ScenarioText text) {
        ScenarioText more = SmallFleet.twice(text);
        for (String file : new String[] {"crews.csv", "stops.csv", "work.csv"}) {
            more = more.table(file, text.text(file));
        }

        assertCosts(more, cost(text));
    }

    @ParameterizedTest
    @MethodSource("fleets")
    void aSecondDepotJustLikeTheFirstDoublesTheCost(ScenarioText text) {
        assertCosts(SmallFleet.twice(text), 2 * cost(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "depots.csv; 63,10; 63,11",
                "depots.csv; 3,63; 3,64",
                "circuits.csv; 1,16,4; 1,20,4",
                "circuits.csv; 1,16,4; 1,16,5",
                "circuits.csv; 2,150; 2,100",
                "crews.csv; 8,60; 9,60",
                "crews.csv; 6,40; 6,50",
                "charger_types.csv; duo,2,1; duo,3,1",
                "charge_times.csv; 42,60; 42,59",
                "sharing_units.csv; 4,10,1; 5,10,1",
                "sharing_units.csv; 4,10,1; 4,12,1",
                "sharing_units.csv; 4,10,1; 4,10,2",
                "stops.csv; 12:00,13:00; 12:00,13:15",
                "stops.csv; north,17:00; north,16:45",
                "pack_types.csv; 300,1000,8; 300,1200,8",
                "pack_types.csv; 300,1000,8; 280,1000,8",
                "tariffs.csv; 0.35; 0.30",
                "work.csv; 2,trimmer,2; 2,trimmer,1.8"
            })
    void loosenedLimitsNeverCostMore(String table, String old, String looser) {
        ScenarioText text = SmallFleet.lunch();

        assertThat(cost(text.replace(table, old, looser))).isLessThanOrEqualTo(cost(text) * (1 + SAME_COST));
    }
}
