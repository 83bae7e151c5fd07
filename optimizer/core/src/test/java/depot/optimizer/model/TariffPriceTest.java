package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DayPlan;
import org.junit.jupiter.api.Test;

/** What energy costs by the hour, by its peak and by the day. */
class TariffPriceTest {

    private static final double CENT = 0.005;
    private static final double KWH = 1e-6;

    /** P/A at 5 % over 10 years, by its closed form. */
    private static final double ANNUITY = (1 - Math.pow(1.05, -10)) / 0.05;

    private static final int DAYS = 150;

    /** Two packs, 1 kWh a night, back at 16:00 when energy is dear; cheap from 22:00 to 16:00. */
    private static ScenarioText evening() {
        return ScenarioText.tiny().table("tariffs.csv", """
                tariff,days,from,to,price_per_kwh
                flat,Mon-Sun,00:00,16:00,0.10
                flat,Mon-Sun,16:00,22:00,0.40
                flat,Mon-Sun,22:00,24:00,0.10
                """);
    }

    @Test
    void aPlainChargerDrawsFromTheMomentItIsLoaded() {
        Planned planned = Planned.of(evening()).proven();

        assertThat(planned.kwhAt("0.40")).isCloseTo(1, within(KWH));
        assertThat(planned.cost(Category.ENERGY)).isCloseTo(0.40 * DAYS * ANNUITY, within(CENT));
    }

    @Test
    void aUnitWaitsForCheapHours() {
        ScenarioText unit = evening().table("sharing_units.csv", """
                        unit_type,outlets,amps,priority_outlets,price,life_years
                        unit,4,16,0,%s,10
                        """);
        Planned bought =
                Planned.of(unit.replace("sharing_units.csv", "%s", "100")).proven();

        assertThat(bought.plan().units()).hasSize(1);
        assertThat(bought.kwhAt("0.10")).isCloseTo(1, within(KWH));
        assertThat(bought.cost(Category.ENERGY)).isCloseTo(0.10 * DAYS * ANNUITY, within(CENT));
        // It saves 0.30 x 150 kWh a year, 347 over the horizon.
        Planned dear =
                Planned.of(unit.replace("sharing_units.csv", "%s", "348")).proven();
        assertThat(dear.plan().units()).isEmpty();
        assertThat(Planned.of(unit.replace("sharing_units.csv", "%s", "347"))
                        .proven()
                        .plan()
                        .units())
                .hasSize(1);
    }

    @Test
    void somebodyInTheDepotLoadsWhenEnergyIsCheap() {
        ScenarioText staffed = evening()
                .replace("depots.csv", "supply_amps,places", "supply_amps,places,staffed_from,staffed_to,swap_minutes")
                .replace("depots.csv", "63,10", "63,10,20:00,22:00,60");
        Planned planned = Planned.of(staffed).proven();

        assertThat(planned.kwhAt("0.10")).isCloseTo(1, within(KWH));
    }

    @Test
    void turnsThatFallIntoCheapHoursAreCheap() {
        // From 16:00 the first hour is dear, the second cheap.
        ScenarioText turn = evening().replace("tariffs.csv", "22:00", "17:00");
        Planned planned = Planned.of(turn).proven();

        assertThat(planned.kwhAt("0.40")).isCloseTo(0.5, within(KWH));
        assertThat(planned.kwhAt("0.10")).isCloseTo(0.5, within(KWH));
    }

    @Test
    void aPriceChangeWithinAChargeFollowsItsTwoStages() {
        // 80 % in the first 42 minutes, 20 % in the 18 after.
        ScenarioText within =
                evening().replace("tariffs.csv", "22:00", "16:42").replace("work.csv", "trimmer,2", "trimmer,1");
        Planned planned = Planned.of(within).proven();

        assertThat(planned.kwhAt("0.40")).isCloseTo(0.4, within(KWH));
        assertThat(planned.kwhAt("0.10")).isCloseTo(0.1, within(KWH));
    }

    /** A big pack of one hour and a small one of half an hour share a charger that takes one after the other; energy is dear at first. */
    private static Planned bigAndSmall(String cheapFrom) {
        return Planned.of(evening()
                        .replace("tariffs.csv", "22:00", cheapFrom)
                        .rows("pack_types.csv", "pack-250,red,250,0.9,1.5,150,1000,8")
                        .rows("charge_times.csv", "duo,pack-250,21,30")
                        .rows("tools.csv", "saw,red,200")
                        .replace("work.csv", "trimmer,2", "trimmer,1")
                        .rows("work.csv", "summer,Mon-Fri,crew-1,2,saw,1"))
                .proven();
    }

    @Test
    void packsOfSeveralKindsChargeInTheirCheapestOrder() {
        // Dear for an hour. The big pack first draws 0.5 kWh in it, the small one first 0.25 and 30 of the big one's 42
        // minutes to 80 %, 0.286.
        Planned bigFirst = bigAndSmall("17:00");
        assertThat(bigFirst.chargers()).isEqualTo(1);
        assertThat(bigFirst.kwhAt("0.40")).isCloseTo(0.5, within(KWH));
        assertThat(bigFirst.kwhAt("0.10")).isCloseTo(0.25, within(KWH));

        // Dear for half an hour: 0.286 kWh for the big one first, 0.25 for the small one.
        Planned smallFirst = bigAndSmall("16:30");
        assertThat(smallFirst.chargers()).isEqualTo(1);
        assertThat(smallFirst.kwhAt("0.40")).isCloseTo(0.25, within(KWH));
        assertThat(smallFirst.kwhAt("0.10")).isCloseTo(0.5, within(KWH));
    }

    private static ScenarioText demand(String price) {
        return ScenarioText.tiny().table("tariff_terms.csv", """
                tariff,standing_per_day,demand_price_per_kw_month,demand_minutes
                flat,0.50,%s,15
                """.formatted(price));
    }

    @Test
    void thePeakIsBilledByTheMonthsOfTheSeason() {
        Planned planned = Planned.of(demand("10")).proven();

        // One pack at a time: 400 Wh in 42 min.
        double kw = 0.4 * 60 / 42;
        double months = 30 * 7 / 365.25 * 12;
        assertThat(planned.plan().days().stream().mapToDouble(DayPlan::demandKw).max())
                .hasValueCloseTo(kw, within(1e-4));
        assertThat(planned.cost(Category.DEMAND)).isCloseTo(kw * 10 * months * ANNUITY, within(0.1));
    }

    @Test
    void aDemandChargeMakesSlowChargersWorthMore() {
        // Together: 1.14 kW; in turn: 0.57 kW, 30 dearer.
        ScenarioText both = demand("%s")
                .rows("charger_types.csv", "pair,2,2,1200,0.9,1,no,170,10")
                .rows("charge_times.csv", "pair,pack-500,42,60");

        assertThat(Planned.of(both.replace("tariff_terms.csv", "%s", "10"))
                        .proven()
                        .chargers("duo"))
                .isEqualTo(1);
        assertThat(Planned.of(both.replace("tariff_terms.csv", "%s", "0.1"))
                        .proven()
                        .chargers("pair"))
                .isEqualTo(1);
    }

    @Test
    void baseLoadAtAnotherTimeLeavesRoomUnderItsPeak() {
        // 5 A of 230 V at noon are billed anyway; 0.57 kW at night are not on top of them.
        ScenarioText base = demand("10").table("base_load.csv", """
                depot,circuit,days,from,to,amps
                north,north-1,Mon-Sun,11:00,13:00,5
                """);

        assertThat(Planned.of(base).proven().cost(Category.DEMAND)).isCloseTo(0, within(CENT));
    }

    @Test
    void standingChargesRunAllYear() {
        assertThat(Planned.of(demand("0")).proven().cost(Category.STANDING))
                .isCloseTo(0.50 * 365.25 * ANNUITY, within(CENT));
    }

    @Test
    void electricityMayGrowDearer() {
        Planned planned = Planned.of(ScenarioText.tiny().setting("electricity_price_growth", "0.05"));

        // Growth as high as the discount rate: ten equal payments of the first.
        assertThat(planned.cost(Category.ENERGY)).isCloseTo(0.30 * DAYS * 10 / 1.05, within(CENT));
    }
}
