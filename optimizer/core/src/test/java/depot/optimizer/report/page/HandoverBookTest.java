package depot.optimizer.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.Carried;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class HandoverBookTest {

    @Test
    void ordersTheStepsOfAHandoverAndRoundsTripsOutward() {
        DayPlan day = new DayPlan(
                List.of(),
                1,
                405,
                List.of(trip("a", 1, 410, 721), trip("b", 1, 739, 900)),
                List.of(load("C-1", 405, 735, Level.EIGHTY), load("C-1", 735, 1845, Level.FULL)),
                List.of(),
                List.of(),
                0);

        assertThat(HandoverBook.of(depot(), day, 15).stream().flatMap(HandoverBookTest::words))
                .containsExactly(
                        "06:45 Load C-1 2 x P to 80 %",
                        "06:45 Give out a, trip 1 3 x P full and 1 at 80 %",
                        "12:15 Collect C-1 2 x P",
                        "12:15 Take in a, trip 1 4 x P",
                        "12:15 Load C-1 2 x P",
                        "12:15 Plug in power bank of a bank",
                        "12:15 Give out b, trip 1 3 x P full and 1 at 80 %",
                        "15:00 Take in b, trip 1 4 x P",
                        "06:45 +1 Collect C-1 2 x P");
    }

    @Test
    void namesTheCrewWhosePacksTheyAre() {
        assertThat(packsOf("crew a")).isEqualTo("1 x P of crew a");
    }

    /** The depot has no packs of it. */
    @Test
    void namesACrewThatVisits() {
        assertThat(packsOf("crew b")).isEqualTo("1 x P of the visiting crew b");
    }

    private static String packsOf(String crew) {
        ChargerLoad load = new ChargerLoad("C-1", 405, 420, List.of(new Loaded("P", crew, Level.FULL, 1)));
        DayPlan day = new DayPlan(List.of(), 1, 405, List.of(), List.of(load), List.of(), List.of(), 0);
        return HandoverBook.of(depot(), day, 15).get(0).steps().get(0).packs();
    }

    private static Stream<String> words(Handover handover) {
        return handover.steps().stream()
                .map(step -> "%s %s %s %s".formatted(handover.time(), step.deed(), step.at(), step.packs()));
    }

    private static TripPlan trip(String crew, int trip, int leave, int back) {
        return new TripPlan(crew, trip, leave, back, List.of(new Carried("P", 3, 1)), List.of(), List.of());
    }

    private static ChargerLoad load(String charger, int load, int collect, Level level) {
        return new ChargerLoad(charger, load, collect, List.of(new Loaded("P", "depot", level, 2)));
    }

    private static DepotPlan depot() {
        return new DepotPlan(
                "depot",
                new SolveStop("", Certificate.of(0, 0, 0), 0, 0, 0, 0, 0, 0, 0),
                List.of(),
                false,
                List.of(),
                List.of(),
                List.of(new ChargerPlacement("C-1", "C", "T", 1, false, false, false)),
                List.of(new BankPlacement("a", "bank", "C", 2)),
                List.of(new PackStock("crew a", "P", 1, 0, 0)),
                List.of(),
                List.of(),
                List.of());
    }
}
