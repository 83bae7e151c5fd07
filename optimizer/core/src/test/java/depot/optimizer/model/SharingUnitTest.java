package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A load-sharing unit caps what is really drawn and lets chargers wait. */
class SharingUnitTest {

    /**
     * One crew that empties 48 packs between 06:00 and its return; four-bay chargers that take 80 min a pack, 600 Wh from the mains each. The circuit
     * and the unit are the test's.
     */
    private static ScenarioText fortyEight(String circuit, String back) {
        return ScenarioText.tiny()
                .table("circuits.csv", "circuit,depot,volts,phases,breaker_amps,outlets\nc,north," + circuit + "\n")
                .replace("depots.csv", "63,10", "63,100")
                .replace("pack_types.csv", "pack-500,blue,500", "pack-500,blue,600")
                .replace("charger_types.csv", "duo,2,1", "duo,4,1")
                .replace("charge_times.csv", "42,60", "55,80")
                .replace("crews.csv", "8,60", "48,1000")
                .replace("tools.csv", "400", "1170")
                .table("stops.csv", """
                        season,days,crew,stop,place,arrive,leave
                        summer,Mon-Fri,crew-1,1,north,,06:00
                        summer,Mon-Fri,crew-1,2,park,06:15,17:45
                        summer,Mon-Fri,crew-1,3,north,%s,
                        """.formatted(back))
                .column("work.csv", "tools_at_once", "2")
                .replace("work.csv", "trimmer,2,", "trimmer,11,");
    }

    private static ScenarioText withUnit(ScenarioText text, String outletsAmpsPriorityPrice) {
        return text.table(
                "sharing_units.csv",
                "unit_type,outlets,amps,priority_outlets,price,life_years\nunit," + outletsAmpsPriorityPrice + ",10\n");
    }

    // Twelve four-bay chargers on one ordinary outlet need most of the night (common practice, no source): five
    // chargers of 524 W run together.
    @Test
    void fortyEightPacksChargeOvernightFromOneOutlet() {
        Planned planned = Planned.of(withUnit(fortyEight("230,1,16,1", "18:00"), "12,16,0,500"))
                .proven();

        assertThat(planned.packs()).isEqualTo(48);
        assertThat(planned.sharedChargers()).isEqualTo(12);
        assertThat(planned.plan().units()).hasSize(1);
    }

    @Test
    void oneOutletDoesNotGiveThatEnergyInEightHours() {
        assertThat(Planned.of(withUnit(fortyEight("230,1,16,1", "22:00"), "12,16,0,500"))
                        .covered())
                .isFalse();
    }

    @Test
    void withoutAUnitOneOutletFeedsOneCharger() {
        assertThat(Planned.of(fortyEight("230,1,16,1", "18:00")).covered()).isFalse();
    }

    // 4 x 80 min = 5 h 20 without a limit (common practice, no source).
    @ParameterizedTest
    @CsvSource({"24:40, 15, 16", "24:45, 15, 16", "24:30, 15, 12", "24:40, 5, 12"})
    void withoutALimitFourPacksTakeFiveHoursTwenty(String back, int handoverMinutes, int chargers) {
        ScenarioText text = fortyEight("230,1,63,20", back)
                .setting("solve", "{\"gap\": 0, \"handover_minutes\": %d}".formatted(handoverMinutes));

        assertThat(Planned.of(text).proven().chargers()).isEqualTo(chargers);
    }

    @Test
    void aUnitHasOutletsOfItsOwn() {
        assertThat(Planned.of(withUnit(fortyEight("230,1,16,1", "18:00"), "11,16,0,500"))
                        .covered())
                .isFalse();
    }

    @Test
    void aUnitsOwnCurrentCapsTheDraw() {
        // Four chargers together give 25 kWh in twelve hours; 28.8 kWh are needed.
        assertThat(Planned.of(withUnit(fortyEight("230,1,16,1", "18:00"), "12,11.3,0,500"))
                        .covered())
                .isFalse();
    }

    /** Two crews with a lunch hour at the depot, one pack a trip; one outlet. Packs are dear. */
    private static ScenarioText twoLunches(int priorityOutlets) {
        ScenarioText text = ScenarioText.tiny()
                .replace("circuits.csv", "1,16,4", "1,16,1")
                .replace("pack_types.csv", "2.5,300", "2.5,5000")
                .replace("charger_types.csv", "duo,2,1", "duo,1,1")
                .rows("crews.csv", "crew-2,north,8,60")
                .table("stops.csv", "season,days,crew,stop,place,arrive,leave\n")
                .table("work.csv", "season,days,crew,stop,tool,hours\n");
        for (int crew = 1; crew <= 2; crew++) {
            text = text.rows("stops.csv", """
                            summer,Mon-Fri,crew-%1$d,1,north,,07:00
                            summer,Mon-Fri,crew-%1$d,2,park,08:00,11:00
                            summer,Mon-Fri,crew-%1$d,3,north,12:00,13:30
                            summer,Mon-Fri,crew-%1$d,4,lane,14:00,17:00
                            summer,Mon-Fri,crew-%1$d,5,north,18:00,""".formatted(crew))
                    .rows(
                            "work.csv",
                            "summer,Mon-Fri,crew-%d,2,trimmer,1".formatted(crew),
                            "summer,Mon-Fri,crew-%d,4,trimmer,1".formatted(crew));
        }
        return withUnit(text, "4,16,%d,100".formatted(priorityOutlets));
    }

    @ParameterizedTest
    @CsvSource({"0, 4", "1, 3", "2, 2"})
    void onlyPriorityOutletsAreCountedOnAtLunch(int priorityOutlets, int packs) {
        assertThat(Planned.of(twoLunches(priorityOutlets)).proven().packs()).isEqualTo(packs);
    }

    // A charger draws up to 571 W, 2.5 A: what sits on priority outlets must be fed together whatever else happens.
    @ParameterizedTest
    @CsvSource({"5, 2", "4.9, 3"})
    void priorityOutletsNeedPowerForAllOfTheirChargersTogether(String unitAmps, int packs) {
        ScenarioText text = twoLunches(2).replace("sharing_units.csv", "4,16,2", "4," + unitAmps + ",2");

        assertThat(Planned.of(text).packs()).isEqualTo(packs);
    }
}
