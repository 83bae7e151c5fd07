package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.SCENARIO;
import static depot.optimizer.replay.Replays.broken;
import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** What may be plugged in behind a load-sharing unit. */
class UnitRulesTest {
    private static final String SHARED =
            change(SCENARIO, "places=1", "places=5") + "unit U outlets=2 amps=5 priority=1\nunit V outlets=2 amps=5\n";

    private static final String PLAN = """
            unit C U
            stock D P 4
            charger Q-1 C Q shared
            trip A 1 08:00 12:30 P:4
            load Q-1 12:30 32:00 P:4
            feed C 12:30 32:00 400
            energy 08:00 32:00 kwh=0.4
            """;

    @Test
    void aUnitMayFeedAllOfACircuit() {
        assertThat(broken(SHARED, PLAN)).isEmpty();
    }

    @Test
    void nothingIsPluggedInBesideAUnit() {
        assertThat(broken(SHARED, change(PLAN, "Q shared", "Q shared\ncharger Q-2 C Q")))
                .containsExactly(Kind.UNIT);
        assertThat(broken(SHARED, change(PLAN, "unit C U", "unit C U\nunit C V")))
                .containsExactly(Kind.UNIT);
    }

    @Test
    void aChargerIsNotSharedWithoutAUnit() {
        assertThat(broken(SHARED, change(PLAN, "unit C U\n", ""))).containsExactly(Kind.UNIT);
    }

    @Test
    void aUnitHasSoManyOutlets() {
        String two = change(PLAN, "Q shared", "Q shared\ncharger Q-2 C Q shared");

        assertThat(broken(SHARED, two)).isEmpty();
        assertThat(broken(SHARED, change(two, "Q-2 C Q shared", "Q-2 C Q shared\ncharger Q-3 C Q shared")))
                .containsExactly(Kind.OUTLETS);
    }

    @Test
    void aUnitHasSoManyPriorityOutlets() {
        String one = change(PLAN, "Q shared", "Q shared priority\ncharger Q-2 C Q shared");

        assertThat(broken(SHARED, one)).isEmpty();
        assertThat(broken(SHARED, change(one, "Q-2 C Q shared", "Q-2 C Q shared priority")))
                .containsExactly(Kind.PRIORITY);
    }

    @Test
    void onlyAPriorityOutletPromisesAnEarlyCollection() {
        String staffed = change(SHARED, "depot D", "depot D staffed_from=08:00 staffed_to=20:00 swap=60");
        String early =
                change(change(PLAN, "12:30 32:00 P:4", "12:30 20:00 P:4"), "C 12:30 32:00 400", "C 12:30 20:00 600");

        assertThat(broken(staffed, early)).containsExactly(Kind.PRIORITY);
        assertThat(broken(staffed, change(early, "shared", "shared priority"))).isEmpty();
    }
}
