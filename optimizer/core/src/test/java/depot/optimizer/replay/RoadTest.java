package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.broken;
import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** Charging on the way: mains on site, the vehicle, and power banks. */
class RoadTest {
    /** Two packs are used up on the first lawn, and used again on the last after a stop with mains. */
    private static final String SCENARIO = """
            circuit C outlets=4
            pack P wh=100
            charger Q bays=4 plate=100
            fits Q P 48 60
            charger R bays=2 at_once=1 plate=100 portable
            fits R P 48 60
            bank B wh=200 output=100 minutes=240 recharge=50
            tool T watts=100
            crew A places=2 payload=20 vehicle=100
            stop A 1 D 08:00
            stop A 2 lawn 08:30 10:30
            stop A 3 yard 11:00 13:00 site=100
            stop A 4 lawn 13:30 15:30
            stop A 5 D 16:00
            work A 2 T hours=2
            work A 4 T hours=2
            """;

    private static final String PLAN = """
            stock D P 2
            charger Q-1 C Q
            kit A R 1
            trip A 1 08:00 16:00 P:2
            %s
            load Q-1 16:00 32:00 P:2
            energy 08:00 32:00 kwh=0.2
            """;

    private static final String SITE = PLAN.formatted("road SITE 3 4 11:00 13:00 R P 2");
    private static final String VEHICLE = PLAN.formatted("road VEHICLE 2 4 10:30 12:30 R P 2");
    private static final String BANK = "bank A B C outlet=3\nkit A B 1\n"
            + PLAN.formatted("road BANK 2 4 10:30 12:30 R P 2").replace("kwh=0.2", "kwh=0.4");

    @Test
    void mainsOnSiteRefillEmptyPacks() {
        assertThat(broken(SCENARIO, SITE)).isEmpty();
        assertThat(broken(SCENARIO, PLAN.formatted(""))).containsExactly(Kind.ENERGY);
    }

    @Test
    void onlyPacksThatAreEmptyByThenAreRecharged() {
        String less = change(SCENARIO, "work A 2 T hours=2", "work A 2 T hours=1.9");

        assertThat(broken(less, SITE)).contains(Kind.ROAD_PACKS, Kind.ENERGY);
        // Two tools at once drain both packs side by side: neither is empty after half of the energy.
        String together = change(SCENARIO, "work A 2 T hours=2", "work A 2 T hours=0.5 at_once=2");
        String one = SITE.replace("R P 2", "R P 1");
        assertThat(broken(together, one)).contains(Kind.ROAD_PACKS);
        assertThat(broken(change(together, "hours=0.5 at_once=2", "hours=1"), one))
                .isEmpty();
    }

    @Test
    void aSiteGivesItsPowerWhileTheCrewIsThere() {
        assertThat(broken(change(SCENARIO, "site=100", "site=99"), SITE)).containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(SCENARIO, SITE.replace("11:00 13:00", "10:59 13:00"))).containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(SCENARIO, SITE.replace("11:00 13:00", "11:00 13:01"))).containsExactly(Kind.ROAD_CHARGE);
    }

    @Test
    void aWindowHoldsSoManyFullCharges() {
        // Two packs one after the other need twice 60 minutes on one charger.
        assertThat(broken(SCENARIO, SITE.replace("11:00 13:00", "11:01 13:00"))).containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(
                        change(SCENARIO, "site=100", "site=200"),
                        SITE.replace("11:00 13:00", "11:01 13:00").replace("kit A R 1", "kit A R 2")))
                .isEmpty();
    }

    @Test
    void chargersThatOverlapAreSeparateAndShareThePower() {
        String two = PLAN.formatted("road SITE 3 4 11:00 12:00 R P 1\nroad SITE 3 4 11:30 12:30 R P 1");

        assertThat(broken(change(SCENARIO, "site=100", "site=200"), two)).containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(change(SCENARIO, "site=100", "site=200"), two.replace("kit A R 1", "kit A R 2")))
                .isEmpty();
        assertThat(broken(SCENARIO, two.replace("kit A R 1", "kit A R 2"))).containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(SCENARIO, two.replace("11:30 12:30", "12:00 13:00"))).isEmpty();
    }

    @Test
    void aVehicleChargesFromLeavingOneStopToReachingAnother() {
        assertThat(broken(SCENARIO, VEHICLE)).isEmpty();
        assertThat(broken(change(SCENARIO, "vehicle=100", "vehicle=50"), VEHICLE))
                .containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(SCENARIO, VEHICLE.replace("10:30 12:30", "10:29 12:30")))
                .containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(SCENARIO, VEHICLE.replace("10:30 12:30", "11:30 13:31")))
                .containsExactly(Kind.ROAD_CHARGE);
    }

    @Test
    void aBankGivesWhatItHoldsAndIsRechargedAtTheDepot() {
        DepotReplay replay = Replays.run(SCENARIO, BANK);

        assertThat(replay.allViolations()).isEmpty();
        // 200 Wh at the depot's charger and 200 Wh into the bank.
        assertThat(replay.days().get(0).energy().get(0).kwh()).isCloseTo(0.4, within(1e-9));
        assertThat(broken(change(SCENARIO, "bank B wh=200", "bank B wh=199"), BANK))
                .contains(Kind.BANK_ENERGY);
        assertThat(broken(change(SCENARIO, "output=100", "output=99"), BANK)).containsExactly(Kind.ROAD_CHARGE);
        assertThat(broken(SCENARIO, change(BANK, "bank A B C outlet=3\n", ""))).contains(Kind.BANK_RECHARGE);
    }

    @Test
    void lossesOfTheBankAreTakenOutOfIt() {
        String lossy = change(SCENARIO, "bank B wh=200", "bank B wh=250 efficiency=0.8");

        assertThat(broken(lossy, BANK.replace("kwh=0.4", "kwh=0.45"))).isEmpty();
        assertThat(broken(change(lossy, "wh=250", "wh=249"), BANK.replace("kwh=0.4", "kwh=0.449")))
                .containsExactly(Kind.BANK_ENERGY);
    }

    @Test
    void aBankIsFullBeforeTheNextDay() {
        // From 16:00 to 08:00 there are 960 minutes.
        assertThat(broken(change(SCENARIO, "minutes=240", "minutes=960"), BANK)).isEmpty();
        assertThat(broken(change(SCENARIO, "minutes=240", "minutes=961"), BANK)).containsExactly(Kind.BANK_RECHARGE);
    }

    @Test
    void aBankCountsAgainstItsCircuit() {
        // The charger's plate of 100 W and the bank's 50 W.
        String tight = change(SCENARIO, "circuit C", "circuit C volts=100 breaker=%s");

        assertThat(broken(tight.formatted("1.875"), BANK)).isEmpty();
        assertThat(broken(tight.formatted("1.874"), BANK)).containsExactly(Kind.CIRCUIT_CURRENT);
    }

    @Test
    void aStoreOfTwoThousandWattHoursRefillsSixLargePacks() {
        // Common practice, no source: 2,000 Wh at 90 % fill six packs of 300 Wh.
        String large = SCENARIO.replace("wh=100", "wh=300")
                .replace("bank B wh=200 output=100", "bank B wh=2000 output=300 efficiency=0.9")
                .replace("at_once=1 plate=100 portable", "at_once=2 plate=300 portable")
                .replace("places=2", "places=6")
                .replace("08:30 10:30", "08:30 09:00")
                .replace("13:30 15:30", "13:30 15:00")
                .replace("hours=2", "hours=18");
        String plan = BANK.replace("P 2", "P 6")
                .replace("P:2", "P:6")
                .replace("C Q\n", "C Q\ncharger Q-2 C Q\n")
                .replace("load Q-1 16:00 32:00 P:6", "load Q-1 16:00 32:00 P:4\nload Q-2 16:00 32:00 P:2")
                .replace("kit A R 1", "kit A R 3")
                .replace("10:30 12:30", "09:00 10:00")
                .replace("kwh=0.4", "kwh=3.8")
                .replace("output=300", "output=900");

        assertThat(broken(large.replace("output=300", "output=900"), plan)).isEmpty();
        String seven = plan.replace("P 6", "P 7").replace("P:6", "P:7").replace("kit A R 3", "kit A R 4");
        assertThat(broken(
                        large.replace("output=300", "output=1200")
                                .replace("places=6", "places=7")
                                .replace("hours=18", "hours=21"),
                        seven))
                .contains(Kind.BANK_ENERGY);
    }
}
