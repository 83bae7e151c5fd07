package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.PLAN;
import static depot.optimizer.replay.Replays.SCENARIO;
import static depot.optimizer.replay.Replays.broken;
import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** Which crews may stay on petrol, and what the replay asks of them. */
class PetrolRulesTest {

    /** What is left of the plan when its only crew takes nothing along. */
    private static final String NOTHING = change(
            change(change(PLAN, "trip A 1 08:00 12:30 P:4\n", ""), "load Q-1 12:30 32:00 P:4\n", ""),
            "energy 08:00 32:00 kwh=0.4\n",
            "");

    @Test
    void aCrewOnPetrolNeedsNoPacksIfItMayStay() {
        assertThat(broken(SCENARIO + "may_stay A\n", "petrol A\n" + NOTHING)).isEmpty();
        assertThat(broken(SCENARIO, "petrol A\n" + NOTHING)).containsExactly(Kind.PETROL);
    }

    @Test
    void aCrewThatIsNotOnPetrolHasItsTrips() {
        assertThat(broken(SCENARIO + "may_stay A\n", NOTHING)).contains(Kind.TRIP);
        assertThat(broken(SCENARIO + "may_stay A\n", PLAN)).isEmpty();
    }

    @Test
    void packsOfACrewOnPetrolAreNotInTheRoute() {
        assertThat(broken(SCENARIO + "may_stay A\n", "petrol A\n" + PLAN)).contains(Kind.TRIP);
    }

    @Test
    void crewsThatTheDepotDoesNotHaveAreMissing() {
        assertThat(broken(SCENARIO, "petrol B\n" + PLAN)).containsExactly(Kind.MISSING_ITEM);
    }
}
