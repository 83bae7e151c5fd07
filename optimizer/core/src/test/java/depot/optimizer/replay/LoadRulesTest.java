package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.PLAN;
import static depot.optimizer.replay.Replays.SCENARIO;
import static depot.optimizer.replay.Replays.broken;
import static depot.optimizer.replay.Replays.brokenWithPlan;
import static depot.optimizer.replay.Replays.brokenWithScenario;
import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** Bays, fits, handovers and trips: the rules of a day that need no clock. */
class LoadRulesTest {
    @Test
    void aChargerHasSoManyBays() {
        assertThat(brokenWithScenario("bays=4", "bays=4")).isEmpty();
        assertThat(brokenWithScenario("bays=4", "bays=3"))
                .containsExactlyInAnyOrder(Kind.BAYS, Kind.PACKS_TO_LOAD, Kind.NOT_FULL);
    }

    @Test
    void aPackFitsOnlyChargersThatHaveATimeForIt() {
        assertThat(brokenWithScenario("fits Q P 64 80", "pack R\nfits Q R 64 80"))
                .contains(Kind.FIT);
    }

    @Test
    void nobodySwapsPacksInAnUnattendedDepot() {
        String later = change(PLAN, "12:30 32:00", "14:00 32:00");
        String staffed = "depot D places=1 staffed_from=08:00 staffed_to=%s swap=60";

        assertThat(broken(SCENARIO, later)).containsExactly(Kind.HANDOVER);
        assertThat(broken(change(SCENARIO, "depot D places=1", staffed.formatted("14:00")), later))
                .isEmpty();
        assertThat(broken(change(SCENARIO, "depot D places=1", staffed.formatted("13:59")), later))
                .containsExactly(Kind.HANDOVER);
    }

    @Test
    void staffedHoursBeforeTheDaysStartAreAtItsEnd() {
        String staffed = change(SCENARIO, "depot D", "depot D staffed_from=05:00 staffed_to=07:00 swap=60");

        assertThat(broken(staffed, change(PLAN, "12:30 32:00", "12:30 29:00"))).isEmpty();
        assertThat(broken(staffed, change(PLAN, "12:30 32:00", "12:30 28:00"))).containsExactly(Kind.HANDOVER);
    }

    @Test
    void departuresAreRoundedDownAndArrivalsUp() {
        String odd = change(change(SCENARIO, "D 08:00", "D 08:07"), "D 12:30", "D 12:31");
        String plan = change(PLAN, "08:00 12:30 P:4", "08:07 12:31 P:4");

        assertThat(broken(odd, change(plan, "Q-1 12:30", "Q-1 12:45"))).isEmpty();
        assertThat(broken(odd, plan)).contains(Kind.HANDOVER);
    }

    @Test
    void aChargerHoldsOneLoadAtATime() {
        String staffed = change(SCENARIO, "depot D", "depot D staffed_from=08:00 staffed_to=20:00 swap=60");
        String two = change(PLAN, "load Q-1 12:30 32:00 P:4", "load Q-1 12:30 %s P:2\nload Q-1 16:00 32:00 P:2");

        assertThat(broken(staffed, two.formatted("16:00"))).isEmpty();
        assertThat(broken(staffed, two.formatted("17:00"))).containsExactly(Kind.CHARGER_BUSY);
    }

    @Test
    void aCrewHasSoManyPlacesForPacks() {
        assertThat(brokenWithScenario("places=4", "places=4")).isEmpty();
        assertThat(brokenWithScenario("places=4", "places=3")).containsExactly(Kind.PACK_PLACES);
    }

    @Test
    void payloadCountsPacksAndKit() {
        assertThat(brokenWithScenario("payload=4", "payload=3.9")).containsExactly(Kind.PAYLOAD);
        String kit = change(SCENARIO, "tool T", "charger R bays=1 kg=2 portable\ntool T");
        assertThat(broken(change(kit, "payload=4", "payload=6"), "kit A R 1\n" + PLAN))
                .isEmpty();
        assertThat(broken(change(kit, "payload=4", "payload=5.9"), "kit A R 1\n" + PLAN))
                .containsExactly(Kind.PAYLOAD);
    }

    @Test
    void toolsThatRunAtOnceEachTakeAPack() {
        // One hour each of four, then five tools of 20 W: energy enough, hands not.
        assertThat(broken(change(change(SCENARIO, "hours=4", "hours=1 at_once=4"), "watts=100", "watts=20"), PLAN))
                .isEmpty();
        assertThat(broken(change(change(SCENARIO, "hours=4", "hours=1 at_once=5"), "watts=100", "watts=20"), PLAN))
                .containsExactly(Kind.TOOLS_AT_ONCE);
    }

    @Test
    void tripsFollowTheRoute() {
        assertThat(brokenWithPlan("trip A 1 08:00 12:30", "trip A 1 08:00 12:00"))
                .containsExactly(Kind.TRIP);
        assertThat(brokenWithPlan("trip A 1 08:00 12:30", "trip A 2 08:00 12:30"))
                .contains(Kind.TRIP, Kind.ENERGY);
        assertThat(brokenWithPlan("trip A 1 08:00 12:30 P:4", "")).contains(Kind.TRIP, Kind.ENERGY);
    }

    @Test
    void thePlannedEnergyIsWhatLoadsDraw() {
        assertThat(brokenWithPlan("kwh=0.4", "kwh=0.39")).containsExactly(Kind.GRID_ENERGY);
        // Losses of the charger are drawn as well.
        assertThat(brokenWithScenario("plate=75", "plate=75 efficiency=0.8")).containsExactly(Kind.GRID_ENERGY);
    }

    @Test
    void aTripEndsBeforeTheNextDayStarts() {
        String late = change(SCENARIO, "D 12:30", "D 32:15");

        assertThat(broken(late, PLAN)).contains(Kind.CYCLE, Kind.TRIP);
    }
}
