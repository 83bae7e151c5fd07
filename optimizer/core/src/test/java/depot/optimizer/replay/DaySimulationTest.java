package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.PLAN;
import static depot.optimizer.replay.Replays.SCENARIO;
import static depot.optimizer.replay.Replays.broken;
import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** Packs, bays and handovers while a day runs. */
class DaySimulationTest {
    private static final String TWO_TRIPS = change(SCENARIO, "stop A 3 D 12:30", """
            stop A 3 D 12:30 18:00
            stop A 4 lawn 18:30 19:00
            stop A 5 D 19:30
            work A 4 T hours=4
            """);

    private static final String TWO_TRIPS_PLAN = """
            stock D P 4
            charger Q-1 C Q
            trip A 1 08:00 12:30 P:4
            trip A 2 18:00 19:30 P:4
            load Q-1 12:30 18:00 P:4
            load Q-1 19:30 32:00 P:4
            energy 08:00 32:00 kwh=0.8
            """;

    @Test
    void fourBaysInSequenceAtEightyMinutesTakeThreeHundredAndTwenty() {
        DepotReplay replay = Replays.run(SCENARIO, PLAN);

        assertThat(replay.allViolations()).isEmpty();
        DayReplay day = replay.days().get(0);
        assertThat(day.outcome()).isEqualTo(Outcome.MET);
        assertThat(day.occurrences()).hasSize(7);
        assertThat(day.loads()).singleElement().satisfies(load -> {
            assertThat(load.readyMinute() - load.loadMinute()).isEqualTo(320);
            assertThat(load.marginMinutes()).isEqualTo(32 * 60 - (12 * 60 + 30) - 320);
        });
        assertThat(day.lowestMargin().orElseThrow().wattHours()).isCloseTo(0, within(1e-6));
        assertThat(day.energyCost().doubleValue()).isCloseTo(0.4 * 0.20, within(1e-9));
    }

    @Test
    void allBaysTogetherTakeAsLongAsOne() {
        DepotReplay replay = Replays.run(change(SCENARIO, "at_once=1 plate=75", "at_once=4 plate=300"), PLAN);

        assertThat(replay.allViolations()).isEmpty();
        LoadTiming load = replay.days().get(0).loads().get(0);
        assertThat(load.readyMinute() - load.loadMinute()).isEqualTo(80);
    }

    @Test
    void packsThatAreReadyJustInTimeLeaveOnTheNextTrip() {
        // 12:30 to 17:50 is 320 minutes; 18:00 is the next quarter of an hour.
        assertThat(broken(TWO_TRIPS, TWO_TRIPS_PLAN)).isEmpty();
    }

    @Test
    void packsThatAreNotReadyMakeTheLoadLateAndTheTripShort() {
        DepotReplay replay = Replays.run(
                change(change(TWO_TRIPS, "12:30 18:00", "12:30 17:45"), "18:30", "18:15"),
                TWO_TRIPS_PLAN.replace("18:00", "17:45"));

        assertThat(Replays.kinds(replay))
                .containsExactlyInAnyOrder(Kind.LATE, Kind.PACKS_TO_CARRY, Kind.ENERGY, Kind.PACKS_TO_LOAD);
        DayReplay day = replay.days().get(0);
        assertThat(day.outcome()).isEqualTo(Outcome.FAILED);
        // 5 of 80 minutes are missing, all of the slow stage: 0.2 * 100 Wh * 5 / 16.
        assertThat(day.missingWhByCircuit().get("C")).isCloseTo(6.25, within(1e-9));
    }

    @Test
    void aPackAtEightyPerCentIsReadyAfterTheFastStage() {
        // One bay: 64 minutes are enough for 80 %, not for the full.
        String scenario = change(change(SCENARIO, "bays=4", "bays=1"), "stop A 3 D 12:30", """
                stop A 3 D 12:30 13:34
                stop A 4 lawn 13:45 14:45
                stop A 5 D 15:00
                work A 4 T hours=0.8
                """);
        scenario = change(change(scenario, "work A 2 T hours=4", "work A 2 T hours=1"), "13:34", "13:45");
        String plan = """
                stock D P 1
                charger Q-1 C Q
                trip A 1 08:00 12:30 P:1
                trip A 2 13:45 15:00 P:1@80
                load Q-1 12:30 13:45 P:1@80
                load Q-1 15:00 32:00 P:1
                energy 08:00 32:00 kwh=0.18
                """;

        assertThat(broken(scenario, plan)).isEmpty();
        assertThat(broken(scenario, plan.replace("P:1@80", "P:1").replace("0.18", "0.2")))
                .contains(Kind.LATE);
        assertThat(broken(change(scenario, "hours=0.8", "hours=0.81"), plan)).containsExactly(Kind.ENERGY);
    }

    @Test
    void packsThatAreNotChargedFailTheDay() {
        assertThat(broken(SCENARIO, change(change(PLAN, "32:00 P:4", "32:00 P:3"), "0.4", "0.3")))
                .containsExactly(Kind.NOT_FULL);
    }

    @Test
    void aPackLeftAtEightyPerCentIsNotFull() {
        assertThat(broken(SCENARIO, change(change(PLAN, "P:4\nenergy", "P:3 P:1@80\nenergy"), "0.4", "0.38")))
                .containsExactly(Kind.NOT_FULL);
    }

    @Test
    void loadsTakeOnlyPacksThatAreThere() {
        assertThat(broken(SCENARIO, change(PLAN, "trip A 1 08:00 12:30 P:4", "trip A 1 08:00 12:30 P:3")))
                .contains(Kind.PACKS_TO_LOAD, Kind.ENERGY);
        assertThat(broken(SCENARIO, change(PLAN, "stock D P 4", "stock D P 3")))
                .contains(Kind.PACKS_TO_CARRY, Kind.PACKS_TO_LOAD);
    }

    @Test
    void aDeclaredShortageIsNotAViolationButTheDayIsNotMet() {
        String more = change(change(SCENARIO, "hours=4", "hours=4.5"), "watts=100", "watts=100");

        assertThat(broken(more, PLAN)).containsExactly(Kind.ENERGY);
        DepotReplay declared = Replays.run(more, change(PLAN, "load Q-1", "short F 50\nload Q-1"));
        assertThat(declared.allViolations()).isEmpty();
        assertThat(declared.days().get(0).outcome()).isEqualTo(Outcome.SHORT);
        assertThat(declared.days().get(0).shortWh()).isCloseTo(50, within(1e-6));
        assertThat(broken(more, change(PLAN, "load Q-1", "short F 49\nload Q-1")))
                .containsExactly(Kind.ENERGY);
    }

    @Test
    void coldAndAgeingTakeEnergyOutOfPacksButDoNotSpareTheCharger() {
        assertThat(broken("season year factor=0.99\n" + SCENARIO, PLAN)).containsExactly(Kind.ENERGY);
        assertThat(broken("settings health=0.99\n" + SCENARIO, PLAN)).containsExactly(Kind.ENERGY);
        assertThat(broken(
                        "settings health=0.8\nseason year factor=0.5\n" + change(SCENARIO, "hours=4", "hours=1.6"),
                        PLAN))
                .isEmpty();
    }

    @Test
    void packsOfACrewServeThatCrewOnly() {
        String own = "settings per_crew\n" + SCENARIO;

        assertThat(broken(own, change(change(PLAN, "stock D", "stock A"), "P:4\nenergy", "P:4 pool=A\nenergy")))
                .isEmpty();
        assertThat(broken(own, PLAN)).contains(Kind.MISSING_ITEM, Kind.PACKS_TO_CARRY);
    }
}
