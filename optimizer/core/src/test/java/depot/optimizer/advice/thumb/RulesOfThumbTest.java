package depot.optimizer.advice.thumb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.advice.thumb.ThumbSettings.Breaker;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.fleet.DepotResult;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.Violation;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The starter by rules of thumb, worked out by hand from the tables that inputs/starter/README.md explains.
 *
 * <p>A new pack gives 500 Wh x 0.8 = 400 Wh: 1.053 h at 380 W. Town is back for lunch, so its longest part counts: 2 h / 1.053 h = 1.9, 2 packs; east
 * and west 3 h, 2.85, 3 packs each. A fifth more, rounded up for each crew: 3, 4 and 4. Town's three packs get three quicks, the other eight packs two
 * rows-of-four.
 */
class RulesOfThumbTest {

    private static final double CENT = 0.005;

    private static final Scenario STARTER = ScenarioLoader.load(Path.of("..", "..", "inputs", "starter"))
            .scenario()
            .orElseThrow();

    private static DepotResult plan(ThumbSettings settings) {
        return RulesOfThumb.plan(STARTER, STARTER.depots().get(0), settings);
    }

    private static double cost(DepotResult result) {
        return result.plan().stop().certificate().cost();
    }

    @Test
    void hoursOverRuntimeRoundedUpAndAFifthMore() {
        assertThat(plan(ThumbSettings.USUAL).plan().packs()).containsExactly(new PackStock("yard", "pack", 11, 0, 2.2));
    }

    @Test
    void withoutSparesTheHoursCount() {
        assertThat(plan(new ThumbSettings(0, Breaker.FULL)).plan().packs())
                .extracting(PackStock::count)
                .containsExactly(2 + 3 + 3);
    }

    @Test
    void chargersArePluggedInUntilTheBreakerIsFull() {
        // A quick draws 2.61 A, a row 0.87 A. On bench two quicks fit in 6 A and no row beside them; wall has two
        // outlets, for a quick and a row. The last row needs the new circuit.
        assertThat(plan(ThumbSettings.USUAL).plan().chargers())
                .extracting(ChargerPlacement::circuit, ChargerPlacement::chargerType, ChargerPlacement::outlet)
                .containsExactly(
                        tuple("bench", "quick", 1),
                        tuple("bench", "quick", 2),
                        tuple("wall", "quick", 1),
                        tuple("wall", "row-of-four", 2),
                        tuple("new", "row-of-four", 1));
        assertThat(plan(ThumbSettings.USUAL).plan().circuitsBuilt()).containsExactly("new");
    }

    @Test
    void theReplayFindsTheCircuitThatIsTooFullAndNothingElse() {
        // Two quicks draw 5.22 A where 6 x 0.8 - 1 = 3.8 A may flow for hours: by their plates, and at lunch in fact.
        DepotResult result = plan(ThumbSettings.USUAL);

        assertThat(result.replay().allViolations())
                .extracting(Violation::kind, Violation::subject)
                .containsExactly(
                        tuple(Violation.Kind.CIRCUIT_CURRENT, "bench"), tuple(Violation.Kind.CIRCUIT_CURRENT, "bench"));
        assertThat(result.replay().failedDays())
                .extracting(DayReplay::daysPerYear)
                .containsExactly(250.0);
        assertThat(result.replay().costs().differences()).isEmpty();
        assertThat(result.replay().proven()).isFalse();
    }

    @Test
    void theBillIsTheOneWorkedOutByHand() {
        // Packs 11 x 200 in wear, quicks 3 x 120, rows 2 x 100, the circuit 900; energy and standing charge as in any
        // plan of the starter: ten loads a day, 1,250.00 and 730.50.
        assertThat(cost(plan(ThumbSettings.USUAL))).isCloseTo(2200 + 360 + 200 + 900 + 1250 + 730.5, within(CENT));
    }

    @Test
    void withWhatTheBreakerMayCarryForHoursThePlanIsProven() {
        // bench 3.8 A: a quick and a row; wall 4.8 A: a quick and a row; the third quick on the new circuit.
        DepotResult result = plan(new ThumbSettings(0.2, Breaker.USABLE));

        assertThat(result.plan().chargers())
                .extracting(ChargerPlacement::circuit, ChargerPlacement::chargerType)
                .containsExactly(
                        tuple("bench", "quick"),
                        tuple("wall", "quick"),
                        tuple("new", "quick"),
                        tuple("bench", "row-of-four"),
                        tuple("wall", "row-of-four"));
        assertThat(result.replay().allViolations()).isEmpty();
        assertThat(result.replay().proven()).isTrue();
        assertThat(cost(result)).isCloseTo(5640.5, within(CENT));
    }

    @Test
    void crewsTakeWhatTheDayAsksForAndChargeAtLunch() {
        DayPlan day = plan(ThumbSettings.USUAL).plan().days().get(0);

        assertThat(day.trips())
                .extracting(TripPlan::crew, TripPlan::trip, trip -> trip.carried()
                        .get(0)
                        .full())
                .containsExactlyInAnyOrder(
                        tuple("town", 1, 2), tuple("town", 2, 2), tuple("east", 1, 3), tuple("west", 1, 3));
        assertThat(day.loads().stream().filter(load -> load.loadMinute() == 720))
                .hasSize(2)
                .allMatch(load -> load.collectMinute() == 780);
        assertThat(day.loads().stream()
                        .flatMap(load -> load.packs().stream())
                        .mapToInt(packs -> packs.count())
                        .sum())
                .isEqualTo(10);
    }
}
