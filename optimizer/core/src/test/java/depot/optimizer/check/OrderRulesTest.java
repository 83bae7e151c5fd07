package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In the tiny scenario a pack-500 costs 300 and the charger duo 200. */
class OrderRulesTest {
    private static ScenarioText with(String file, String header, String... rows) {
        return tiny().replace("charger_types.csv", ",no,", ",yes,")
                .table(
                        "sharing_units.csv",
                        "unit_type,outlets,amps,priority_outlets,price,life_years\nshare,6,16,1,500,10\n")
                .table(
                        "power_banks.csv",
                        "bank_type,energy_wh,output_watts,efficiency,recharge_watts,recharge_minutes,weight_kg,price,"
                                + "life_years\nbank,2000,900,0.9,1000,120,20,1500,8\n")
                .table(file, header + "\n" + String.join("\n", rows) + "\n");
    }

    private static ScenarioText tiers(String... rows) {
        return with("price_tiers.csv", "item,from_count,price", rows);
    }

    private static ScenarioText limits(String... rows) {
        return with("delivery_limits.csv", "item,phase,count", rows)
                .table("phases.csv", "phase,year\nfirst,0\nnext,1\n");
    }

    private static ScenarioText moves(String... rows) {
        return with("moves.csv", "item,cost", rows);
    }

    @ParameterizedTest
    @ValueSource(strings = {"pack-500", "duo", "share", "bank"})
    void everyKindOfItemIsTaken(String item) {
        Breach.in(tiers(item + ",10,150")).isNone();
        Breach.in(limits(item + ",first,10")).isNone();
        Breach.in(moves(item + ",10")).isNone();
    }

    @Test
    void anItemIsKnown() {
        String message = "no pack, charger, sharing-unit or power-bank type";
        Breach.in(tiers("due,10,150")).isOnlyError("price_tiers.csv:2:item", "due", message);
        Breach.in(limits("due,first,10")).isOnlyError("delivery_limits.csv:2:item", "due", message);
        Breach.in(moves("due,10")).isOnlyError("moves.csv:2:item", "due", message);
    }

    @Test
    void aTierIsBelowTheItemsPrice() {
        Breach.in(tiers("duo,2,199.99")).isNone();
        Breach.in(tiers("duo,2,200.00")).isOnlyError("price_tiers.csv:2:price", "200.00", "own price, 200");
        Breach.in(tiers("duo,1,150")).isOnlyError("price_tiers.csv:2:from_count", "1", "out of range");
    }

    @Test
    void countsRiseWithinAnItem() {
        Breach.in(tiers("duo,10,190", "pack-500,5,290", "duo,11,180")).isNone();
        Breach.in(tiers("duo,10,190", "pack-500,5,290", "duo,9,180"))
                .isOnlyError("price_tiers.csv:4:from_count", "9", "below 10 on line 2");
        Breach.in(tiers("duo,10,190", "duo,10,180"))
                .isOnlyError("price_tiers.csv:3:from_count", "10", "same item, from_count is on line 2");
    }

    /** Eleven at 170 cost less than ten at 190: an order may be rounded up to a tier. */
    @Test
    void pricesFallWithinAnItem() {
        Breach.in(tiers("duo,10,190", "duo,11,189.99", "duo,12,0")).isNone();
        Breach.in(tiers("duo,10,190", "duo,11,170")).isNone();
        Breach.in(tiers("duo,10,190", "duo,20,190"))
                .isOnlyError("price_tiers.csv:3:price", "190", "not below 190, the price from 10 on (line 2)");
        Breach.in(tiers("duo,10,180", "pack-500,5,290", "duo,20,190"))
                .isOnlyError("price_tiers.csv:4:price", "190", "not below 180");
    }

    @Test
    void aLimitIsOfAPhase() {
        Breach.in(limits("duo,first,0", "duo,next,10")).isNone();
        Breach.in(limits("duo,last,10")).isOnlyError("delivery_limits.csv:2:phase", "last", "no such phase");
        Breach.in(limits("duo,first,10", "duo,first,9"))
                .isOnlyError("delivery_limits.csv:3:phase", "first", "same item, phase is on line 2");
        Breach.in(limits("duo,first,-1")).isOnlyError("delivery_limits.csv:2:count", "-1", "out of range");
        Breach.in(limits("duo,first,10").without("phases.csv"))
                .isOnlyError("delivery_limits.csv:2:phase", "first", "no such phase");
    }

    @Test
    void anItemIsMovedForOneCost() {
        Breach.in(moves("duo,0", "share,40")).isNone();
        Breach.in(moves("duo,-1")).isOnlyError("moves.csv:2:cost", "-1", "out of range");
        Breach.in(moves("duo,10", "duo,12")).isOnlyError("moves.csv:3:item", "duo", "same item is on line 2");
    }

    @Test
    void aBrokenPriceSilencesWhatNeedsIt() {
        Breach.in(tiers("duo,10,250").replace("charger_types.csv", ",200,", ",two,"))
                .isOnlyError("charger_types.csv:2:price", "two", "not a number");
    }
}
