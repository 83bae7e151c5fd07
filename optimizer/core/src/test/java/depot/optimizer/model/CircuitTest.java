package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.CostLine.Category;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What circuits, plugs, outlets, places and the supply carry. */
class CircuitTest {

    private static final double CENT = 0.005;

    /** One charger of a plate power on one circuit: {@code volts,phases,breaker_amps,outlets,plug_amps}. */
    private static ScenarioText one(String circuit, String plateWatts) {
        return ScenarioText.tiny()
                .table(
                        "circuits.csv",
                        "circuit,depot,volts,phases,breaker_amps,outlets,plug_amps\nc,north," + circuit + "\n")
                .replace("charger_types.csv", "duo,2,1,600", "duo,2,1," + plateWatts);
    }

    /** Two one-bay chargers of 1700 W. */
    private static ScenarioText two() {
        return ScenarioText.tiny().replace("charger_types.csv", "duo,2,1,600", "duo,1,1,1700");
    }

    // Rule seen in NEC 210.20(A): the device is rated at least 125 % of a continuous load. 230 V x 16 A = 3680 W.
    @ParameterizedTest
    @CsvSource({"3680, true", "3682.3, false"})
    void sixteenAmperesFitATwentyAmpereBreakerAndNoMore(String watts, boolean fits) {
        assertThat(Planned.of(one("230,1,20,4,", watts)).replayed().covered()).isEqualTo(fits);
    }

    // sqrt(3) x 400 V x 16 A = 11085.1 W (recomputed).
    @ParameterizedTest
    @CsvSource({"11085, true", "11086, false"})
    void threePhasesCarryRootThreeTimesAsMuch(String watts, boolean fits) {
        assertThat(Planned.of(one("400,3,20,4,", watts)).replayed().covered()).isEqualTo(fits);
    }

    // BS 1363 13 A at 230 V, IEC 60309 16 A at 230 V, NEMA 5-15 at 80 % of 15 A and 120 V (from memory).
    @ParameterizedTest
    @CsvSource({
        "'230,1,32,4,13', 2990, true",
        "'230,1,32,4,13', 2991, false",
        "'230,1,32,4,16', 3680, true",
        "'230,1,32,4,16', 3681, false",
        "'120,1,20,4,12', 1440, true",
        "'120,1,20,4,12', 1441, false",
        "'120,1,15,4,', 1440, true",
        "'120,1,15,4,', 1441, false"
    })
    void aPlugCarriesItsOwnLimit(String circuit, String watts, boolean fits) {
        assertThat(Planned.of(one(circuit, watts)).replayed().covered()).isEqualTo(fits);
    }

    @Test
    void baseLoadTakesRoomFromAPlainCircuitAtItsPeak() {
        // 3680 W and 1 A that flows for an hour in the middle of Sunday only.
        ScenarioText loaded = one("230,1,20,4,", "3680").table("base_load.csv", """
                        depot,circuit,days,from,to,amps
                        north,c,Sun,12:00,13:00,1
                        """);

        assertThat(Planned.of(loaded).replayed().covered()).isFalse();
        assertThat(Planned.of(loaded.replace("charger_types.csv", "3680", "3450"))
                        .replayed()
                        .covered())
                .isTrue();
    }

    @Test
    void powerFactorRaisesTheCurrent() {
        ScenarioText lagging =
                one("230,1,20,4,", "3312").replace("circuits.csv", "plug_amps", "plug_amps,power_factor");

        assertThat(Planned.of(lagging.replace("circuits.csv", "20,4,", "20,4,,0.9"))
                        .covered())
                .isTrue();
        assertThat(Planned.of(lagging.replace("circuits.csv", "20,4,", "20,4,,0.89"))
                        .covered())
                .isFalse();
    }

    @Test
    void everyChargerTakesAnOutlet() {
        ScenarioText wide = two().replace("circuits.csv", "1,16,4", "1,32,2");

        assertThat(Planned.of(wide).proven().chargers()).isEqualTo(2);
        assertThat(Planned.of(wide.replace("circuits.csv", "1,32,2", "1,32,1"))
                        .replayed()
                        .covered())
                .isFalse();
    }

    @Test
    void everyChargerTakesItsPlaces() {
        ScenarioText wide =
                two().replace("circuits.csv", "1,16,4", "1,32,2").replace("charger_types.csv", "0.9,1,no", "0.9,3,no");

        assertThat(Planned.of(wide.replace("depots.csv", "63,10", "63,6")).covered())
                .isTrue();
        assertThat(Planned.of(wide.replace("depots.csv", "63,10", "63,5")).covered())
                .isFalse();
    }

    @Test
    void theSupplyCarriesEightyPercentOfItsRating() {
        // 0.8 x sqrt(3) x 400 V x 6 A = 3325 W; two chargers take 3400 W.
        ScenarioText small = two().replace("circuits.csv", "1,16,4", "1,32,2").replace("depots.csv", "3,63", "3,6");

        assertThat(Planned.of(small).replayed().covered()).isFalse();
        assertThat(Planned.of(small.replace("charger_types.csv", "1700", "1660"))
                        .replayed()
                        .covered())
                .isTrue();
    }

    @Test
    void aBiggerSupplyIsBoughtOnlyWhereItIsNeeded() {
        ScenarioText offered = two().replace("circuits.csv", "1,16,4", "1,32,2")
                .replace(
                        "depots.csv",
                        "supply_amps,places",
                        "supply_amps,places,supply_upgrade_amps,supply_upgrade_cost");

        Planned needed = Planned.of(offered.replace("depots.csv", "3,63,10", "3,6,10,7,500"))
                .proven();
        assertThat(needed.plan().supplyUpgraded()).isTrue();
        assertThat(needed.cost(Category.SUPPLY)).isCloseTo(500, within(CENT));
        Planned spare = Planned.of(offered.replace("depots.csv", "3,63,10", "3,63,10,100,500"))
                .proven();
        assertThat(spare.plan().supplyUpgraded()).isFalse();
        assertThat(spare.cost(Category.SUPPLY)).isZero();
    }

    @Test
    void aCircuitOnOfferIsBuiltOnlyWhereItIsNeeded() {
        ScenarioText offered = two().table("circuits.csv", """
                        circuit,depot,volts,phases,breaker_amps,outlets,install_cost
                        old,north,230,1,16,%s,0
                        new,north,230,1,16,4,900
                        """);

        Planned needed = Planned.of(offered.replace("circuits.csv", "%s", "1")).proven();
        assertThat(needed.plan().circuitsBuilt()).containsExactly("new");
        assertThat(needed.cost(Category.CIRCUITS)).isCloseTo(900, within(CENT));
        Planned spare = Planned.of(
                        offered.replace("circuits.csv", "%s", "2").replace("charger_types.csv", "1700", "1400"))
                .proven();
        assertThat(spare.plan().circuitsBuilt()).isEmpty();
        assertThat(spare.cost(Category.CIRCUITS)).isZero();
    }
}
