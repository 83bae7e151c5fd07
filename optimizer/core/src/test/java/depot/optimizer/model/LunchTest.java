package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

/**
 * A stop at the depot at noon. A large pack takes 55 min to 80 % and 80 min to the full on an ordinary charger, 30 and 45 min on a fast one (common
 * practice, no source).
 */
class LunchTest {

    private static final String ORDINARY = "duo,pack-1000,55,80";
    private static final String FAST = "duo,pack-1000,30,45";

    /** Two trips around lunch, each with as much work; a pack holds 900 Wh, 720 Wh at 80 %. Packs are dear, chargers are not. */
    private static ScenarioText lunch(String chargeTime, String leave, String workHours) {
        return ScenarioText.tiny()
                .replace("pack_types.csv", "pack-500,blue,500,0.9,2.5,300", "pack-1000,blue,1000,0.9,5,5000")
                .replace("charger_types.csv", "duo,2,1,600", "duo,2,1,1600")
                .table("charge_times.csv", "charger_type,pack_type,minutes_to_80,minutes_to_full\n" + chargeTime + "\n")
                .table("stops.csv", """
                        season,days,crew,stop,place,arrive,leave
                        summer,Mon-Fri,crew-1,1,north,,07:00
                        summer,Mon-Fri,crew-1,2,park,08:00,11:00
                        summer,Mon-Fri,crew-1,3,north,12:00,%s
                        summer,Mon-Fri,crew-1,4,lane,14:00,17:00
                        summer,Mon-Fri,crew-1,5,north,18:00,
                        """.formatted(leave))
                .table("work.csv", """
                        season,days,crew,stop,tool,hours
                        summer,Mon-Fri,crew-1,2,trimmer,%1$s
                        summer,Mon-Fri,crew-1,4,trimmer,%1$s
                        """.formatted(workHours));
    }

    @Test
    void anOrdinaryChargerGivesNothingInFortyFiveMinutes() {
        assertThat(Planned.of(lunch(ORDINARY, "12:45", "1.5")).proven().packs()).isEqualTo(2);
    }

    @Test
    void aFastChargerFillsAPackInFortyFiveMinutes() {
        assertThat(Planned.of(lunch(FAST, "12:45", "2.25")).proven().packs()).isEqualTo(1);
    }

    @Test
    void aFastChargerGivesEightyPercentInThirtyMinutes() {
        assertThat(Planned.of(lunch(FAST, "12:30", "1.8")).proven().packs()).isEqualTo(1);
        assertThat(Planned.of(lunch(FAST, "12:30", "1.81")).proven().packs()).isEqualTo(2);
    }

    @Test
    void anOrdinaryChargerGivesEightyPercentInAnHour() {
        Planned planned = Planned.of(lunch(ORDINARY, "13:00", "1.8")).proven();

        assertThat(planned.packs()).isEqualTo(1);
        assertThat(planned.plan().days().get(0).trips().get(1).carried().get(0).at80())
                .isEqualTo(1);
    }

    @Test
    void eightyPercentDoesNotCoverMoreThanEightyPercent() {
        assertThat(Planned.of(lunch(ORDINARY, "13:00", "1.81")).proven().packs())
                .isEqualTo(2);
    }

    @Test
    void departuresAreRoundedDownToTheHandover() {
        // 12:44 becomes 12:30: too early for the full charge of 45 min.
        assertThat(Planned.of(lunch(FAST, "12:44", "2.25")).proven().packs()).isEqualTo(2);
    }

    @Test
    void shortPricesOfChargersDecideBetweenPacksAndSpeed() {
        // A second charger type at a price above the pack it saves is not bought.
        ScenarioText both = lunch(ORDINARY, "12:45", "2.25")
                .rows("charge_times.csv", "swift,pack-1000,30,45")
                .rows("charger_types.csv", "swift,1,1,1600,0.9,1,no,%s,10");

        assertThat(Planned.of(both.replace("charger_types.csv", "%s", "400")).packs())
                .isEqualTo(1);
        assertThat(Planned.of(both.replace("charger_types.csv", "%s", "40000")).packs())
                .isEqualTo(2);
    }
}
