package depot.optimizer.replay;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;

/** Twelve four-bay sequential chargers and 48 packs that come back at 18:00 and leave at 06:00. */
class UnitControllerTest {
    private static final int PACK_WH = 690;
    private static final double ALL_WH = 48 * PACK_WH;

    /** One ordinary outlet of 16 A at 230 V, of which 12.8 A may flow for hours: 2,944 W. */
    private static final String SCENARIO = """
            circuit C breaker=16 outlets=1
            pack P wh=%d
            charger Q bays=4 at_once=1 plate=736
            fits Q P 45 80
            unit U outlets=12 amps=16 priority=2
            tool T watts=1000
            crew A
            stop A 1 D 06:00
            stop A 2 lawn 08:00 17:00
            stop A 3 D 18:00
            work A 2 T hours=33
            """.formatted(PACK_WH);

    private static String plan(String feeds) {
        StringBuilder text = new StringBuilder("unit C U\nstock D P 48\nday Mon-Sun start=06:00\n");
        text.append("trip A 1 06:00 18:00 P:48\n");
        for (int i = 1; i <= 12; i++) {
            text.append("charger Q-%d C Q shared outlet=%d%n".formatted(i, i));
            text.append("load Q-%d 18:00 30:00 P:4%n".formatted(i));
        }
        return text + feeds + "energy 18:00 30:00 kwh=%s%n".formatted(ALL_WH / 1000);
    }

    /** As much as the unit can give from the start: only the amperes bind. */
    private static final String UNPACED = "feed C 18:00 30:00 100000\n";

    @Test
    void oneOutletFillsFortyEightPacksInAboutTwelveHours() {
        // Common practice, no source: a night of twelve hours behind one outlet.
        DepotReplay replay = Replays.run(SCENARIO, plan(UNPACED));

        assertThat(replay.allViolations()).isEmpty();
        int last = replay.days().get(0).loads().stream()
                .mapToInt(LoadTiming::readyMinute)
                .max()
                .orElseThrow();
        assertThat((last - 18 * 60) / 60.0).isBetween(11.25, 12.0);
        assertThat(replay.days().get(0).peaks())
                .filteredOn(peak -> peak.circuit().equals("C"))
                .singleElement()
                .satisfies(peak -> assertThat(peak.amps()).isBetween(11.0, 12.8 + 1e-9));
    }

    @Test
    void withoutALimitTheSameTakesFiveHoursAndTwentyMinutes() {
        String plain = plan("").replace(" shared", "").replace("unit C U\n", "");
        DepotReplay replay = Replays.run(SCENARIO.replace("breaker=16 outlets=1", "breaker=100 outlets=12"), plain);

        assertThat(replay.allViolations()).isEmpty();
        assertThat(replay.days().get(0).loads()).allSatisfy(load -> assertThat(load.readyMinute() - load.loadMinute())
                .isEqualTo(320));
    }

    @Test
    void overTwelveHoursNoPackStarvesOfRounding() {
        // 48 * 690 Wh in 12 h is 2,760 W on average, with 2,944 W of room for whole chargers.
        DepotReplay replay = Replays.run(SCENARIO, plan("feed C 18:00 30:00 %s%n".formatted(ALL_WH)));

        assertThat(replay.allViolations()).isEmpty();
    }

    private static final String CHEAP_FROM_TEN_TO_FIVE = """
            price 00:00 05:00 0.10
            price 05:00 22:00 0.30
            price 22:00 24:00 0.10
            """;

    @Test
    void aUnitWaitsForCheaperPower() {
        String wide = SCENARIO.replace("breaker=16", "breaker=64").replace("amps=16", "amps=64");
        String feeds = "feed C 18:00 22:00 0\nfeed C 22:00 29:00 %s%nfeed C 29:00 30:00 0%n".formatted(ALL_WH);
        String cheap = plan(feeds).replace("energy 18:00 30:00", "energy 22:00 29:00 price=0.10");
        DepotReplay replay = Replays.run(wide + CHEAP_FROM_TEN_TO_FIVE, cheap);

        assertThat(replay.allViolations()).isEmpty();
        Series watts = replay.days().get(0).circuitLoads().get(0).watts();
        for (int step = 0; step < watts.size(); step++) {
            int minute = watts.minuteOf(step);
            boolean planned = minute >= 22 * 60 && minute < 29 * 60;
            assertThat(watts.at(step)).isLessThanOrEqualTo(planned ? 12 * 736 : 0);
        }
    }

    @Test
    void aUnitDoesNotWaitWhereNoLaterPowerIsCheaper() {
        String wide = SCENARIO.replace("breaker=16", "breaker=64").replace("amps=16", "amps=64");
        String feeds = "feed C 18:00 24:00 0\nfeed C 24:00 30:00 %s%n".formatted(ALL_WH);
        DepotReplay replay = Replays.run(wide, plan(feeds).replace("energy 18:00 30:00", "energy 24:00 30:00"));

        assertThat(replay.allViolations()).isEmpty();
        assertThat(replay.days().get(0).loads())
                .allSatisfy(load -> assertThat(load.readyMinute()).isEqualTo(18 * 60 + 320));
    }

    @Test
    void aUnitStaysWithinTheDemandThatIsPaidFor() {
        // 33.12 kWh within twelve hours: 2.5 kW is too little, 2.9 kW is enough for whole chargers of 736 W.
        String billed = SCENARIO + "terms demand=10 minutes=15\n";
        DepotReplay enough = Replays.run(billed, plan(UNPACED) + "demand 2.95\n");
        DepotReplay little = Replays.run(billed, plan(UNPACED) + "demand 2.5\n");

        assertThat(enough.allViolations()).isEmpty();
        assertThat(enough.days().get(0).demandKw()).isBetween(2.7, 2.95);
        assertThat(Replays.kinds(little)).contains(Kind.LATE).doesNotContain(Kind.DEMAND);
    }

    @Test
    void aSlicesEnergyIsDrawnEarlySoThatTheTaperFits() {
        // Spread evenly, 5,520 W to the last minute would leave twelve packs in their slow stage of 237 W each.
        String wide = SCENARIO.replace("breaker=16", "breaker=64").replace("amps=16", "amps=64");
        String feeds = "feed C 18:00 24:00 0\nfeed C 24:00 30:00 %s%n".formatted(ALL_WH);
        DepotReplay replay = Replays.run(wide, plan(feeds).replace("energy 18:00 30:00", "energy 24:00 30:00"));

        assertThat(replay.allViolations()).isEmpty();
    }

    @Test
    void whatCouldNotBeDrawnInItsSliceIsDrawnLater() {
        // All of it is planned for six hours, which have room for half of it: the rest follows at once.
        DepotReplay replay =
                Replays.run(SCENARIO, plan("feed C 18:00 24:00 %s%nfeed C 24:00 30:00 0%n".formatted(ALL_WH)));

        assertThat(replay.allViolations()).isEmpty();
    }

    @Test
    void aUnitDoesNotWaitWhenThatWouldMakeItLate() {
        // The last four hours have room for a third of the work: the unit begins long before them.
        DepotReplay replay = Replays.run(SCENARIO, plan("feed C 26:00 30:00 %s%n".formatted(ALL_WH)));

        assertThat(replay.allViolations()).isEmpty();
    }

    @Test
    void aNightTooShortLeavesLoadsLate() {
        String short10 = plan(UNPACED).replace("18:00", "21:00");
        DepotReplay replay = Replays.run(SCENARIO.replace("3 D 18:00", "3 D 21:00"), short10);

        assertThat(Replays.kinds(replay)).contains(Kind.LATE, Kind.NOT_FULL);
        assertThat(replay.days().get(0).missingWhByCircuit()).containsOnlyKeys("C");
    }

    @Test
    void priorityOutletsAreFedFirst() {
        String plan = plan(UNPACED)
                .replace("charger Q-11 C Q shared", "charger Q-11 C Q shared priority")
                .replace("charger Q-12 C Q shared", "charger Q-12 C Q shared priority");

        DepotReplay replay = Replays.run(SCENARIO, plan);

        assertThat(replay.allViolations()).isEmpty();
        assertThat(replay.days().get(0).loads())
                .filteredOn(
                        load -> load.charger().equals("Q-11") || load.charger().equals("Q-12"))
                .hasSize(2)
                .allSatisfy(load ->
                        assertThat(load.readyMinute() - load.loadMinute()).isEqualTo(320));
    }

    @Test
    void baseLoadTakesRoomFromTheUnitMinuteByMinute() {
        String busy = SCENARIO + "base 18:00 24:00 circuit=C amps=10\n";
        DepotReplay replay = Replays.run(busy, plan(UNPACED));

        assertThat(Replays.kinds(replay)).containsExactlyInAnyOrder(Kind.LATE, Kind.NOT_FULL);
        Series watts = replay.days().get(0).circuitLoads().get(0).watts();
        for (int step = 0; step < watts.size(); step++) {
            int minute = watts.minuteOf(step);
            if (minute >= 18 * 60 && minute < 24 * 60) {
                assertThat(watts.at(step)).isLessThanOrEqualTo(2.8 * 230 + 1e-6);
            }
        }
    }
}
