package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Packs that are empty by then are recharged from mains on site, the vehicle or a power bank. Packs are dear. */
class RoadChargingTest {

    /** Work for as many packs at the first and at the last of three stops; nothing to do at the one in between. */
    private static ScenarioText route(String siteWatts, String hours) {
        return ScenarioText.tiny()
                .replace("pack_types.csv", "2.5,300", "2.5,5000")
                .replace(
                        "charger_types.csv",
                        "places,portable,price,life_years\nduo,2,1,600,0.9,1,no,200,10",
                        "places,portable,weight_kg,price,life_years\nduo,8,1,600,0.9,1,no,,200,10\nbag,1,1,600,0.9,0,yes,3,50,10")
                .rows("charge_times.csv", "bag,pack-500,42,60")
                .table("stops.csv", """
                        season,days,crew,stop,place,arrive,leave,site_watts
                        summer,Mon-Fri,crew-1,1,north,,07:00,
                        summer,Mon-Fri,crew-1,2,park,08:00,10:00,
                        summer,Mon-Fri,crew-1,3,cafe,10:30,11:30,%s
                        summer,Mon-Fri,crew-1,4,lane,12:00,14:00,
                        summer,Mon-Fri,crew-1,5,north,16:00,,
                        """.formatted(siteWatts))
                .table("work.csv", """
                        season,days,crew,stop,tool,hours
                        summer,Mon-Fri,crew-1,2,trimmer,%1$s
                        summer,Mon-Fri,crew-1,4,trimmer,%1$s
                        """.formatted(hours));
    }

    private static ScenarioText withBank(ScenarioText text, String energyWh) {
        return text.table("power_banks.csv", """
                bank_type,energy_wh,output_watts,efficiency,recharge_watts,recharge_minutes,weight_kg,price,life_years
                store,%s,2000,0.9,300,480,20,400,10
                """.formatted(energyWh));
    }

    @ParameterizedTest
    @CsvSource({"600, 1", "599, 2", "0, 2"})
    void mainsOnSiteRefillsAnEmptyPack(String siteWatts, int packs) {
        Planned planned = Planned.of(route(siteWatts, "1.125")).proven();

        assertThat(planned.packs()).isEqualTo(packs);
        assertThat(planned.carriedKit("bag")).isEqualTo(packs == 1 ? 1 : 0);
    }

    @Test
    void aStopShorterThanTheChargeDoesNotHelp() {
        ScenarioText hurried = route("600", "1.125").replace("stops.csv", "10:30,11:30", "10:30,11:29");

        assertThat(Planned.of(hurried).proven().packs()).isEqualTo(2);
    }

    @Test
    void aPackThatIsNotEmptyYetIsNotRecharged() {
        // 448 of 450 Wh are used at the first stop.
        assertThat(Planned.of(route("600", "1.12")).proven().packs()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"600, 1", "599, 2"})
    void theVehicleChargesBetweenStops(String watts, int packs) {
        ScenarioText vehicle = route("0", "1.125").column("crews.csv", "vehicle_watts", watts);

        assertThat(Planned.of(vehicle).proven().packs()).isEqualTo(packs);
    }

    @Test
    void whatIsCarriedForChargingWeighsOnThePayload() {
        // One pack and the portable charger weigh 5.5 kg, two packs 5 kg.
        ScenarioText light = route("600", "1.125").replace("crews.csv", "8,60", "8,5.4");

        assertThat(Planned.of(light).proven().packs()).isEqualTo(2);
        assertThat(Planned.of(light.replace("crews.csv", "5.4", "5.5")).proven().packs())
                .isEqualTo(1);
    }

    // A store of 2,000 Wh refills six large packs (common practice, no source): each takes 270 / 0.9 / 0.9 = 333.3 Wh
    // from it.
    @ParameterizedTest
    @CsvSource({"2000, 6, 1", "1999, 6, 2", "2000, 7, 2"})
    void aPowerBankRefillsSixPacks(String energyWh, int packs, int banks) {
        String hours = Double.toString(packs * 270 / 2000.0);
        ScenarioText text = withBank(route("0", hours), energyWh)
                .replace("tools.csv", "400", "2000")
                .replace("crews.csv", "8,60", "8,100")
                .replace("pack_types.csv", "pack-500,blue,500", "pack-500,blue,300")
                .replace("charger_types.csv", "bag,1,1,600", "bag,7,7,2000")
                .replace("charge_times.csv", "bag,pack-500,42,60", "bag,pack-500,50,65");
        Planned planned = Planned.of(text).proven();

        assertThat(planned.packs()).isEqualTo(packs);
        assertThat(planned.carriedKit("store")).isEqualTo(banks);
        assertThat(planned.plan().banks()).hasSize(banks);
    }

    @Test
    void aPowerBankNeedsAnOutletForTheNight() {
        ScenarioText text = withBank(route("0", "1.125"), "1000");

        assertThat(Planned.of(text).proven().packs()).isEqualTo(1);
        assertThat(Planned.of(text.replace("circuits.csv", "1,16,4", "1,16,1"))
                        .proven()
                        .packs())
                .isEqualTo(2);
    }

    @Test
    void aPowerBankHasToBeFullAgainByTheMorning() {
        // Back at 16:00, out at 07:00: 900 minutes.
        ScenarioText text = withBank(route("0", "1.125"), "1000");

        assertThat(Planned.of(text.replace("power_banks.csv", "480", "900"))
                        .proven()
                        .packs())
                .isEqualTo(1);
        assertThat(Planned.of(text.replace("power_banks.csv", "480", "901"))
                        .proven()
                        .packs())
                .isEqualTo(2);
    }

    @Test
    void onlyPacksOfATypeThatIsOnBoardAreRecharged() {
        // Small packs fit the portable charger, big ones do not. Two small ones cost less than two big ones.
        ScenarioText text = route("600", "1.125")
                .rows("pack_types.csv", "pack-250,blue,250,0.9,1.3,4000,100000,10")
                .replace("charger_types.csv", "bag,1,1", "bag,2,2")
                .replace("charge_times.csv", "bag,pack-500", "bag,pack-250")
                .rows("charge_times.csv", "duo,pack-250,42,60");
        Planned planned = Planned.of(text).proven();

        assertThat(planned.packs()).isEqualTo(2);
        assertThat(planned.plan().packs())
                .allSatisfy(stock -> assertThat(stock.packType()).isEqualTo("pack-250"));
    }
}
