package depot.optimizer.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.CostLine.Category;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Packs wear by use and by age; what is owned already is not bought. Two packs of 300, 150 days a year, ten years at 5 %. */
class OwnershipTest {

    private static final double CENT = 0.005;
    private static final double RATE = 1e-9;
    private static final double AT_END = Math.pow(1.05, -10);
    private static final double ANNUITY = (1 - AT_END) / 0.05;

    private static ScenarioText owned(String rows) {
        return ScenarioText.tiny().table("owned.csv", "depot,circuit,crew,item,count\n" + rows + "\n");
    }

    // Two packs, 300 charges a year together: 300 / 1000 a year by use, 2 / 8 by age.
    @ParameterizedTest
    @CsvSource({"'1000,8', 0.3", "'2000,8', 0.25", "'1000,5', 0.4"})
    void packsAreReplacedAtTheFasterOfTwoRates(String life, double perYear) {
        Planned planned = Planned.of(ScenarioText.tiny().replace("pack_types.csv", "1000,8", life))
                .proven();

        assertThat(planned.plan().packs().get(0).replacedPerYear()).isCloseTo(perYear, within(RATE));
        assertThat(planned.cost(Category.PACK_WEAR)).isCloseTo(perYear * 300 * ANNUITY, within(CENT));
    }

    @Test
    void boughtPacksKeepTheirValueToTheEnd() {
        assertThat(Planned.of(ScenarioText.tiny()).proven().cost(Category.PACKS))
                .isCloseTo(2 * 300 * (1 - AT_END), within(CENT));
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "2, 0", "3, 0"})
    void ownedPacksAreNotBoughtButWear(int count, int bought) {
        Planned planned = Planned.of(owned("north,,,pack-500," + count)).proven();

        assertThat(planned.cost(Category.PACKS)).isCloseTo(bought * 300 * (1 - AT_END), within(CENT));
        assertThat(planned.cost(Category.PACK_WEAR)).isGreaterThan(0.25 * 300 * ANNUITY - CENT);
    }

    @Test
    void aChargerThatLastsTheHorizonCostsItsPrice() {
        ScenarioText mounted = ScenarioText.tiny()
                .replace("charger_types.csv", "price,life_years", "price,install_cost,life_years")
                .replace("charger_types.csv", "200,10", "200,30,10");

        assertThat(Planned.of(mounted).proven().cost(Category.CHARGERS)).isCloseTo(230, within(CENT));
    }

    @Test
    void aChargerOfSixYearsIsFollowedByAnotherThatIsWorthAThirdAtTheEnd() {
        ScenarioText six = ScenarioText.tiny().replace("charger_types.csv", "200,10", "200,6");

        assertThat(Planned.of(six).proven().cost(Category.CHARGERS))
                .isCloseTo(200 + 200 * Math.pow(1.05, -6) - 200 * AT_END / 3, within(CENT));
    }

    @Test
    void anOwnedChargerCostsNothingUntilItsFollower() {
        ScenarioText owned = owned("north,north-1,,duo,1");

        assertThat(Planned.of(owned).proven().cost(Category.CHARGERS)).isZero();
        assertThat(Planned.of(owned.replace("charger_types.csv", "200,10", "200,6"))
                        .proven()
                        .cost(Category.CHARGERS))
                .isCloseTo(200 * Math.pow(1.05, -6) - 200 * AT_END / 3, within(CENT));
    }

    @Test
    void anOwnedDearChargerIsPreferredToANewCheapOne() {
        ScenarioText two = owned("north,north-1,,duo,1")
                .rows("charger_types.csv", "thrift,2,1,600,0.9,1,no,20,10")
                .rows("charge_times.csv", "thrift,pack-500,42,60");

        assertThat(Planned.of(two).proven().chargers("duo")).isEqualTo(1);
        assertThat(Planned.of(two.without("owned.csv")).proven().chargers("thrift"))
                .isEqualTo(1);
    }

    @Test
    void crewBasesCostEveryYear() {
        ScenarioText base = ScenarioText.tiny().table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-1,north,120\n");

        assertThat(Planned.of(base).proven().cost(Category.CREW_BASES)).isCloseTo(120 * ANNUITY, within(CENT));
    }
}
