package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.SmallFleet;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.ChangeWords;
import depot.optimizer.sweep.change.Changes;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Each kind of change does what it says and nothing else. */
class ChangesTest {

    /** Two crews, one of them back for lunch; two circuits, one to be built; a bank, a demand charge, a crew base, petrol. */
    private static final Scenario BEFORE = Planned.load(text());

    private static ScenarioText text() {
        return SmallFleet.lunch()
                .replace("seasons.csv", "summer,30", "summer,30\nwinter,12")
                .column("seasons.csv", "pack_capacity_factor", "0.9")
                .column("crews.csv", "petrol_cost_per_year", "1000")
                .table("tariff_terms.csv", """
                        tariff,standing_per_day,demand_price_per_kw_month,demand_minutes
                        flat,0.5,6,15
                        """)
                .table("crew_bases.csv", """
                        crew,depot,cost_per_year
                        crew-1,north,200
                        """)
                .replace(
                        "depots.csv",
                        "supply_amps,places",
                        "supply_amps,places,supply_upgrade_amps,supply_upgrade_cost")
                .replace("depots.csv", "3,63,10", "3,63,10,80,700")
                .table("power_banks.csv", """
                        bank_type,energy_wh,output_watts,efficiency,recharge_watts,recharge_minutes,weight_kg,price,life_years
                        bank,2000,1200,0.9,500,300,20,900,6
                        """)
                .rows("charger_types.csv", "carry,1,1,1000,0.9,1,yes,150,6")
                .rows("charge_times.csv", "carry,pack-500,30,45")
                .column("charger_types.csv", "weight_kg", "2")
                .column("charger_types.csv", "install_cost", "20");
    }

    private static final Scenario SHARED = Planned.load(TwoDepots.everything());

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "budget; first; 500; coupling.phases[0].budget Optional[1400] Optional[500]",
                "all_budgets; ; 0.5; coupling.phases[0].budget Optional[1400] Optional[700.0]"
                        + " | coupling.phases[1].budget Optional[2000] Optional[1000.0]",
                "item_price; pack-500; 2; packTypes[0].price 300 600 | coupling.priceTiers[0].price 250 500",
                "item_price; duo; 2; chargerTypes[0].price 200 400"
            })
    void aKindChangesWhatTheDepotsShare(String kind, String of, String value, String expected) {
        Change change = new Change(ChangeKind.of(kind).orElseThrow(), of == null ? "" : of, new BigDecimal(value));

        assertThat(Differences.of(SHARED, Changes.apply(SHARED, change)))
                .containsExactlyInAnyOrder(expected.split(" \\| ", -1));
    }

    @Test
    void whatTheDepotsShareIsMultipliedWithAllMoney() {
        Change change = new Change(ChangeKind.ALL_MONEY, "", new BigDecimal("2"));

        assertThat(Differences.of(SHARED, Changes.apply(SHARED, change)))
                .filteredOn(difference -> difference.startsWith("coupling"))
                .containsExactlyInAnyOrder(
                        "coupling.phases[0].budget Optional[1400] Optional[2800]",
                        "coupling.phases[1].budget Optional[2000] Optional[4000]",
                        "coupling.priceTiers[0].price 250 500",
                        "coupling.moves[0].cost 10 20");
    }

    @Test
    void aCrewLikeAnotherMayChangeWhenThatOneMay() {
        Change change = new Change(ChangeKind.CREW_COPIES, "crew-2", BigDecimal.ONE);
        Scenario after = Changes.apply(SHARED, change);

        assertThat(after.coupling().conversionOf("crew-2-copy-1").earliestPhase())
                .isEqualTo("first");
        assertThat(after.coupling().conversionOf("crew-2-copy-1").latestPhase()).isEmpty();
    }

    private static List<String> differences(String kind, String of, String value) {
        Change change = new Change(ChangeKind.of(kind).orElseThrow(), of == null ? "" : of, new BigDecimal(value));
        return Differences.of(BEFORE, Changes.apply(BEFORE, change));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "item_price; duo; 0.5; chargerTypes[0].price 200 100",
                "item_price; bank; 2; powerBankTypes[0].price 900 1800",
                "item_price; unit; 2; sharingUnitTypes[0].price 90 180",
                "item_price; ; 2; packTypes[0].price 300 600 | packTypes[1].price 420 840 | chargerTypes[0].price 200 400"
                        + " | chargerTypes[1].price 160 320 | chargerTypes[2].price 150 300"
                        + " | sharingUnitTypes[0].price 90 180 | powerBankTypes[0].price 900 1800",
                "building_price; ; 2; depots[0].supplyUpgradeCost 700 1400 | circuits[1].installCost 150 300"
                        + " | chargerTypes[0].installCost 20 40 | chargerTypes[1].installCost 20 40"
                        + " | chargerTypes[2].installCost 20 40",
                "electricity_price; flat; 2; priceBands[0].pricePerKwh 0.1 0.2 | priceBands[1].pricePerKwh 0.35 0.7"
                        + " | priceBands[2].pricePerKwh 0.1 0.2",
                "demand_price; ; 0.5; tariffTerms[0].demandPricePerKwMonth 6 3",
                "electricity_growth; ; 0.03; electricityPriceGrowth 0.0 0.03",
                "petrol_price; ; 1.5; crews[0].petrolCostPerYear 1000 1500 | crews[1].petrolCostPerYear 1000 1500",
                "shortage_price; ; 12; shortageCostPerKwh Optional[40] Optional[12]",
                "horizon; ; 12; horizonYears 10 12",
                "discount_rate; ; 0.1; discountRate 0.05 0.1",
                "demand_quantile; ; 0.95; demandQuantile 0.9 0.95",
                "demand_spread; ; 0.2; demandSpread 0.0 0.2",
                "work_hours; crew-2; 0.5; work[1].hours 1.5 0.75 | work[2].hours 1.5 0.75",
                "work_hours; ; 2; work[0].hours 2.0 4.0 | work[1].hours 1.5 3.0 | work[2].hours 1.5 3.0",
                "pack_health; ; 0.8; packHealth 1.0 0.8",
                "pack_life; pack-800; 2; packTypes[1].cycleLife 1000.0 2000.0 | packTypes[1].calendarYears 8.0 16.0",
                "season_capacity; winter; 0.7; seasons[1].packCapacityFactor 0.9 0.7",
                "season_capacity; ; 0.7; seasons[0].packCapacityFactor 0.9 0.7 | seasons[1].packCapacityFactor 0.9 0.7",
                "charge_times; swift; 1.5; chargeTimes[2].minutesTo80 24 36 | chargeTimes[2].minutesToFull 36 54"
                        + " | chargeTimes[3].minutesTo80 38 57 | chargeTimes[3].minutesToFull 57 86",
                "charge_times; duo; 0.5; chargerTypes[0].plateWatts 600.0 1200.0 | chargeTimes[0].minutesTo80 42 21"
                        + " | chargeTimes[0].minutesToFull 60 30 | chargeTimes[1].minutesTo80 70 35"
                        + " | chargeTimes[1].minutesToFull 100 50",
                "circuit_amps; north-2; -2; circuits[1].breakerAmps 10.0 8.0",
                "circuit_amps; north; 4; circuits[0].breakerAmps 16.0 20.0 | circuits[1].breakerAmps 10.0 14.0",
                "supply_amps; north; 7; depots[0].supplyAmps 63.0 70.0",
                "places; north; -3; depots[0].places 10 7",
                "lunch_minutes; ; 15; stops[5].leaveMinute 780 795",
                "lunch_minutes; crew-1; 15; ",
                "late_return; crew-2; 30; stops[7].arriveMinute 1020 1050 | stops[7].leaveMinute 1020 1050",
                "late_return; ; 5; stops[2].arriveMinute 960 965 | stops[2].leaveMinute 960 965"
                        + " | stops[7].arriveMinute 1020 1025 | stops[7].leaveMinute 1020 1025"
            })
    void aKindChangesWhatItSays(String kind, String of, String value, String expected) {
        List<String> wanted = expected == null ? List.of() : Arrays.asList(expected.split(" \\| ", -1));

        assertThat(differences(kind, of, value)).containsExactlyInAnyOrderElementsOf(wanted);
    }

    @Test
    void everyAmountOfMoneyIsMultiplied() {
        assertThat(differences("all_money", null, "2"))
                .containsExactlyInAnyOrderElementsOf(Set.of(
                        "shortageCostPerKwh Optional[40] Optional[80]",
                        "depots[0].supplyUpgradeCost 700 1400",
                        "circuits[1].installCost 150 300",
                        "packTypes[0].price 300 600",
                        "packTypes[1].price 420 840",
                        "chargerTypes[0].price 200 400",
                        "chargerTypes[0].installCost 20 40",
                        "chargerTypes[1].price 160 320",
                        "chargerTypes[1].installCost 20 40",
                        "chargerTypes[2].price 150 300",
                        "chargerTypes[2].installCost 20 40",
                        "sharingUnitTypes[0].price 90 180",
                        "powerBankTypes[0].price 900 1800",
                        "crews[0].petrolCostPerYear 1000 2000",
                        "crews[1].petrolCostPerYear 1000 2000",
                        "crewBases[0].costPerYear 200 400",
                        "priceBands[0].pricePerKwh 0.1 0.2",
                        "priceBands[1].pricePerKwh 0.35 0.7",
                        "priceBands[2].pricePerKwh 0.1 0.2",
                        "tariffTerms[0].standingPerDay 0.5 1",
                        "tariffTerms[0].demandPricePerKwMonth 6 12"));
    }

    @Test
    void copiesOfACrewWorkAndDriveLikeItAndOwnNothing() {
        Change two = new Change(ChangeKind.CREW_COPIES, "crew-2", BigDecimal.valueOf(2));

        Scenario after = Changes.apply(BEFORE, two);

        assertThat(after.crews())
                .extracting(Crew::id)
                .containsExactly("crew-1", "crew-2", "crew-2-copy-1", "crew-2-copy-2");
        assertThat(Differences.of(BEFORE, after)).allMatch(difference -> difference.contains(" + "));
        assertThat(after.stops()).hasSize(BEFORE.stops().size() + 10);
        assertThat(after.work()).hasSize(BEFORE.work().size() + 4);
        assertThat(after.owned()).isEqualTo(BEFORE.owned());
        assertThat(Differences.of(BEFORE.crews().get(1), after.crews().get(3)))
                .containsExactly("id crew-2 crew-2-copy-2");
    }

    @ParameterizedTest
    @EnumSource(ChangeKind.class)
    void theNeutralValueLeavesTheScenarioAsItIs(ChangeKind kind) {
        Scenario before = kind == ChangeKind.BUDGET ? SHARED : BEFORE;
        String of = kind.about().required()
                ? (kind == ChangeKind.CREW_COPIES ? "crew-1" : "north")
                : kind == ChangeKind.BUDGET ? "first" : "";
        BigDecimal neutral =
                BigDecimal.valueOf(Changes.neutral(before, kind, of).orElseThrow());

        Scenario after =
                Changes.apply(before, new Change(kind, of, kind.form().whole() ? neutral.setScale(0) : neutral));

        // Optional amounts are the same with another number of digits.
        assertThat(Differences.of(before, after))
                .allMatch(difference -> difference.matches(".*Optional\\[(\\d+)] Optional\\[\\1\\.0]"));
    }

    @ParameterizedTest
    @EnumSource(ChangeKind.class)
    void wordsAreUniqueAndNameWhatIsChanged(ChangeKind kind) {
        String of = kind.about().none() ? "" : "something";
        Set<String> others = EnumSet.complementOf(EnumSet.of(kind)).stream()
                .map(other ->
                        ChangeWords.of(new Change.Subject(other, other.about().none() ? "" : "something")))
                .collect(Collectors.toSet());

        assertThat(ChangeWords.of(new Change.Subject(kind, of))).isNotIn(others).contains(of);
    }
}
