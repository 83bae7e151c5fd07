package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

/** A bay holds one pack from one handover to the next; a sequential charger takes its bays in turn. */
class BaysTest {

    /** Two packs a night; 400 Wh at 1400 W take 17.1 min, the last 100 Wh 4.3 min: both rounded up. */
    private static ScenarioText fast(String baysAndTogether) {
        return ScenarioText.tiny()
                .replace("charger_types.csv", "duo,2,1,600", "duo," + baysAndTogether + ",1400")
                .replace("charge_times.csv", "42,60", "18,23");
    }

    /** The crew needs four packs and is away until an hour of the night; 60 min a pack until 07:00. */
    private static ScenarioText shortNight(String baysAndTogetherAndWatts, String back) {
        return ScenarioText.tiny()
                .replace("charger_types.csv", "duo,2,1,600", "duo," + baysAndTogetherAndWatts)
                .replace("work.csv", "trimmer,2", "trimmer,4.5")
                .replace("stops.csv", "north,16:00", "north," + back);
    }

    @Test
    void oneBayChargesOnePackPerNightHoweverFast() {
        Planned planned = Planned.of(fast("1,1")).proven();

        assertThat(planned.packs()).isEqualTo(2);
        assertThat(planned.chargers("duo")).isEqualTo(2);
    }

    @Test
    void twoBaysChargeTwoPacksPerNight() {
        assertThat(Planned.of(fast("2,1")).proven().chargers("duo")).isEqualTo(1);
    }

    @Test
    void aStaffedDepotSwapsPacksInOneBay() {
        ScenarioText staffed = fast("1,1")
                .replace("depots.csv", "supply_amps,places", "supply_amps,places,staffed_from,staffed_to,swap_minutes")
                .replace("depots.csv", "63,10", "63,10,16:00,18:00,30");

        assertThat(Planned.of(staffed).proven().chargers("duo")).isEqualTo(1);
    }

    @Test
    void swapsCloserThanTheChargeTakesDoNotHelp() {
        // 23 min do not fit in 20, and after 16:20 nobody is there.
        ScenarioText staffed = fast("1,1")
                .replace("depots.csv", "supply_amps,places", "supply_amps,places,staffed_from,staffed_to,swap_minutes")
                .replace("depots.csv", "63,10", "63,10,16:00,16:20,20");

        assertThat(Planned.of(staffed).proven().chargers("duo")).isEqualTo(2);
    }

    @Test
    void inTurnAChargerFillsNoMorePacksThanTimesFit() {
        // Four bays, three hours, an hour each: three packs.
        assertThat(Planned.of(shortNight("4,1,600", "28:00")).proven().chargers("duo"))
                .isEqualTo(2);
    }

    @Test
    void inTurnAnHourMoreFillsTheFourthBay() {
        assertThat(Planned.of(shortNight("4,1,600", "27:00")).proven().chargers("duo"))
                .isEqualTo(1);
    }

    @Test
    void togetherAllBaysFillInOneHour() {
        assertThat(Planned.of(shortNight("4,4,2400", "30:00")).proven().chargers("duo"))
                .isEqualTo(1);
    }

    @Test
    void returnsAreRoundedUpToTheHandover() {
        // 27:01 becomes 27:15, and 225 minutes hold three charges of an hour.
        assertThat(Planned.of(shortNight("4,1,600", "27:01")).proven().chargers("duo"))
                .isEqualTo(2);
    }
}
