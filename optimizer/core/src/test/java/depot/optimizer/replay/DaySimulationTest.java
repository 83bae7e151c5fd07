package depot.optimizer.replay;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** A crew that takes packs in the morning and brings them back at 12:30, charged until the next morning. */
class DaySimulationTest {
    private static final String SCENARIO = """
            circuit C
            pack P wh=100
            charger Q bays=4 at_once=1 plate=75
            fits Q P 64 80
            tool T watts=100
            crew A
            stop A 1 D 08:00
            stop A 2 lawn 08:30 12:00
            stop A 3 D 12:30
            work A 2 T hours=4
            """;

    private static final String PLAN = """
            stock D P 4
            charger Q-1 C Q
            trip A 1 08:00 12:30 P:4
            load Q-1 12:30 32:00 P:4
            energy 08:00 32:00 kwh=0.4
            """;

    private static DepotReplay replay(String scenario, String plan) {
        return FleetReplay.runDepot(ScenarioText.read(scenario), PlanText.read(plan));
    }

    @Test
    void fourBaysInSequenceAtEightyMinutesTakeThreeHundredAndTwenty() {
        DepotReplay replay = replay(SCENARIO, PLAN);

        assertThat(replay.allViolations()).isEmpty();
        DayReplay day = replay.days().get(0);
        assertThat(day.outcome()).isEqualTo(Outcome.MET);
        assertThat(day.loads()).singleElement().satisfies(load -> {
            assertThat(load.readyMinute() - load.loadMinute()).isEqualTo(320);
            assertThat(load.marginMinutes()).isEqualTo(32 * 60 - (12 * 60 + 30) - 320);
        });
        assertThat(day.lowestMargin()).hasValueSatisfying(m -> assertThat(m.wattHours())
                .isCloseTo(0, org.assertj.core.data.Offset.offset(1e-6)));
    }

    @Test
    void aSecondTripCannotLeaveBeforeItsPacksAreReady() {
        String scenario = SCENARIO.replace("stop A 3 D 12:30", """
                stop A 3 D 12:30 17:45
                stop A 4 lawn 18:00 19:00
                stop A 5 D 19:15
                work A 4 T hours=4
                """);
        String plan = """
                stock D P 4
                charger Q-1 C Q
                trip A 1 08:00 12:30 P:4
                trip A 2 17:45 19:15 P:4
                load Q-1 12:30 17:45 P:4
                load Q-1 19:15 32:00 P:4
                energy 08:00 32:00 kwh=0.8
                """;

        assertThat(replay(scenario, plan).allViolations())
                .extracting(Violation::kind)
                .contains(Kind.LATE, Kind.PACKS_TO_CARRY, Kind.ENERGY);
        assertThat(replay(scenario.replace("17:45", "17:50"), plan.replace("17:45", "17:50"))
                        .allViolations())
                .extracting(Violation::kind)
                .contains(Kind.HANDOVER);
        assertThat(replay(
                                scenario.replace("17:45", "17:51").replace("18:00", "18:06"),
                                plan.replace("17:45 19:15", "17:51 19:15").replace("17:45", "17:50"))
                        .allViolations())
                .isNotEmpty();
    }
}
