package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

class EquipmentRulesTest {
    private static final String UNITS = "unit_type,outlets,amps,priority_outlets,price,life_years\n";

    private static ScenarioText times(String to80, String toFull) {
        return tiny().replace("charge_times.csv", "42,60", to80 + "," + toFull);
    }

    @Test
    void aChargerChargesNoMoreThanItsBays() {
        Breach.in(tiny().replace("charger_types.csv", "duo,2,1,600", "duo,2,2,1200"))
                .isNone();
        Breach.in(tiny().replace("charger_types.csv", "duo,2,1,600", "duo,2,3,1800"))
                .isOnlyError("charger_types.csv:2:charging_at_once", "3", "more than its 2 bays");
    }

    @Test
    void aUnitHasNoMorePriorityOutletsThanOutlets() {
        Breach.in(tiny().table("sharing_units.csv", UNITS + "share,4,16,4,500,10\n"))
                .isNone();
        Breach.in(tiny().table("sharing_units.csv", UNITS + "share,4,16,5,500,10\n"))
                .isOnlyError("sharing_units.csv:2:priority_outlets", "5", "more than its 4 outlets");
    }

    @Test
    void eightyPerCentComesBeforeFull() {
        Breach.in(times("60", "60")).isOnlyError("charge_times.csv:2:minutes_to_80", "60", "not below");
    }

    /** The pack takes 500 Wh x 0.9 / 0.9 = 500 Wh: 400 Wh up to 80 % and 100 Wh after it; 600 W plate x 1.02 = 612 W. */
    @Test
    void aStageOfChargingDrawsNoMoreThanThePlatePower() {
        Breach.in(times("40", "60")).isNone();
        Breach.in(times("39", "60")).isOnlyError("charge_times.csv:2:minutes_to_80", "39", "draws 615 W");
        Breach.in(times("50", "60")).isNone();
        Breach.in(times("51", "60")).isOnlyError("charge_times.csv:2:minutes_to_full", "60", "draws 667 W");
        Breach.in(times("42", "60").replace("charger_types.csv", "duo,2,1,600", "duo,2,2,600"))
                .hasError("charge_times.csv:2:minutes_to_80", "42", "draws 1143 W");
    }

    @Test
    void someChargerTakesEachPack() {
        Breach.in(tiny().rows("pack_types.csv", "pack-300,blue,300,0.9,1.5,200,1000,8"))
                .isOnlyError("pack_types.csv:3:pack_type", "pack-300", "no charger takes this pack");
        Breach.in(tiny().rows("charger_types.csv", "solo,1,1,600,0.9,1,no,100,10"))
                .isOnlyNotice("charger_types.csv:3:charger_type", "solo", "no pack fits");
    }

    @Test
    void eachToolHasAPack() {
        Breach.in(tiny().replace("tools.csv", "blue", "bleu"))
                .isOnlyError("tools.csv:2:family", "bleu", "no pack of this family");
    }

    /** 16 A x 0.8 x 230 V = 2,944 W. */
    @Test
    void aChargerThatNoCircuitCarriesIsNoticed() {
        Breach.in(tiny().replace("charger_types.csv", ",600,", ",2944,")).isNone();
        Breach.in(tiny().replace("charger_types.csv", ",600,", ",2945,"))
                .isOnlyNotice("charger_types.csv:2:plate_watts", "2945", "no circuit");
    }

    @Test
    void keysOfItemsDiffer() {
        Breach.in(tiny().table("sharing_units.csv", UNITS + "duo,4,16,1,500,10\n"))
                .isOnlyError("sharing_units.csv:2:unit_type", "duo", "charger_types.csv has an item");
    }

    /** 600 W x 100 min = 1,000 Wh. */
    @Test
    void rechargingFillsABank() {
        Breach.in(bank("1000", "700")).isNone();
        Breach.in(bank("1021", "700"))
                .isOnlyError("power_banks.csv:2:recharge_minutes", "100", "draws 1000 Wh, the bank holds 1021.0");
    }

    @Test
    void aBankThatFeedsNoChargerIsNoticed() {
        Breach.in(bank("1000", "599")).isOnlyNotice("power_banks.csv:2:output_watts", "599", "below the plate power");
        Breach.in(bank("1000", "700").replace("charger_types.csv", ",yes,", ",no,"))
                .isOnlyNotice("power_banks.csv:2:output_watts", "700", "no portable charger");
    }

    private static ScenarioText bank(String energy, String output) {
        return tiny().replace("charger_types.csv", ",no,", ",yes,")
                .table(
                        "power_banks.csv",
                        "bank_type,energy_wh,output_watts,efficiency,recharge_watts,recharge_minutes,weight_kg,price,"
                                + "life_years\nbank," + energy + "," + output + ",0.9,600,100,12,900,8\n");
    }
}
