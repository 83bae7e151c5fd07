package depot.optimizer.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.fixture.FinanceText;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Yearly flows of real plans: their present value is the plan's cost, and each of them is what it should be. */
class CashFlowTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final Offset<Double> ROUNDING = within(1e-6);

    private static Plan plan(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan();
    }

    @Test
    void presentValueIsTheCostOfTheStarter() {
        Scenario starter = ScenarioLoader.load(Path.of("..", "..", "inputs", "starter"))
                .scenario()
                .orElseThrow();
        Plan plan = plan(starter);
        CashFlow flow = CashFlow.of(starter, plan);

        // Worked out by hand on the scenario's page: 4,020.50, of which 2,040 at once; packs come back at their price.
        assertThat(Appraisal.of(flow).presentCost()).isCloseTo(4_020.50, CENT);
        assertThat(plan.certificate().cost()).isCloseTo(4_020.50, CENT);
        assertThat(flow.planCosts().get(0)).isCloseTo(2_040, ROUNDING);
        assertThat(flow.planCosts().get(1)).isCloseTo(320 + 250 + 146.10, ROUNDING);
        assertThat(flow.planCosts().get(5)).isCloseTo(320 + 250 + 146.10 - 1_600, ROUNDING);
        assertThat(flow.petrolKnown()).isFalse();
    }

    @Test
    void presentValueIsTheCostWithReplacementsResidualsAndGrowth() {
        Scenario scenario = Planned.load(FinanceText.everything());
        Plan plan = plan(scenario);
        CashFlow flow = CashFlow.of(scenario, plan);

        assertThat(Appraisal.of(flow).presentCost())
                .isCloseTo(plan.certificate().cost(), CENT);
        for (FlowKind kind : FlowKind.values()) {
            boolean expected = !Set.of(
                            FlowKind.SHORTAGE, FlowKind.FLEET_PURCHASES, FlowKind.PETROL, FlowKind.PETROL_EITHER_WAY)
                    .contains(kind);
            assertThat(flow.byKind().get(kind).stream().anyMatch(amount -> amount != 0))
                    .as(kind.name())
                    .isEqualTo(expected);
        }
    }

    /** In every year all crews' petrol and upkeep is either saved or paid either way: by hand 900 + 700 a year, however long each phase lasts. */
    @Test
    void petrolOfAllCrewsIsTheSameInEveryPhase() {
        ScenarioText text = TwoDepots.inPhases("first,0,1000", "second,3,")
                .column("tools.csv", "petrol_litres_per_hour", "0.5")
                .setting(
                        "finance",
                        "{\"petrol_price_per_litre\": 1.5, \"carbon_price_per_tonne\": 50, \"grid_kg_co2_per_kwh\": 0}");
        Scenario scenario = Planned.load(text);
        Plan plan = plan(scenario);
        CashFlow flow = CashFlow.of(scenario, plan);

        assertThat(plan.depots().get(1).onPetrol()).containsExactly("crew-2");
        assertThat(flow.petrolOfAll().subList(1, 11))
                .allSatisfy(year -> assertThat(year).isCloseTo(900 + 700, ROUNDING));
        // By hand: 2 and 3 hours on 5 days of 30 weeks, 0.5 litres an hour.
        double perLitre = scenario.finance().petrolKgCo2PerLitre() * 50 / 1000;
        assertThat(flow.at(FlowKind.CARBON_SAVED, 3)).isCloseTo(2 * 150 * 0.5 * perLitre, ROUNDING);
        assertThat(flow.at(FlowKind.CARBON_SAVED, 4)).isCloseTo((2 + 3) * 150 * 0.5 * perLitre, ROUNDING);
        assertThat(Appraisal.of(flow).presentCost())
                .isCloseTo(plan.certificate().cost(), CENT);
    }

    /** Its petrol is a cost of the plan, and would have to be paid without the plan as well. */
    @Test
    void aCrewThatStaysOnPetrolSavesAndLosesNothing() {
        Scenario scenario = Planned.load(ScenarioText.tiny()
                .column("crews.csv", "petrol_cost_per_year", "10")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,,\n")
                .setting("finance", "{\"petrol_price_growth\": 0.05}"));
        Plan plan = plan(scenario);
        CashFlow flow = CashFlow.of(scenario, plan);

        assertThat(plan.depots().get(0).onPetrol()).containsExactly("crew-1");
        assertThat(Appraisal.of(flow).presentCost())
                .isCloseTo(plan.certificate().cost(), CENT);
        assertThat(flow.at(FlowKind.PETROL, 3)).isCloseTo(-10, ROUNDING);
        assertThat(flow.at(FlowKind.PETROL_SAVED, 3)).isZero();
        assertThat(flow.net()).allSatisfy(net -> assertThat(net).isCloseTo(0, ROUNDING));
    }

    @Test
    void shortagesAreInTheFlowAtTheirPrice() {
        Scenario scenario = Planned.load(FinanceText.everything()
                .setting("shortage_cost_per_kwh", "3")
                .replace("crews.csv", "north,8,60", "north,1,60"));
        Plan plan = plan(scenario);
        CashFlow flow = CashFlow.of(scenario, plan);

        assertThat(flow.at(FlowKind.SHORTAGE, 1)).isNegative();
        assertThat(Appraisal.of(flow).presentCost())
                .isCloseTo(plan.certificate().cost(), CENT);
    }

    @Test
    void petrolFollowsFromWorkAndPrices() {
        // By hand: 30 weeks x 5 days x 2 h x 1.2 l/h = 360 l, at 1.50: 540 of 900 a year, rising by 3 %; 360 of upkeep.
        Scenario scenario = Planned.load(FinanceText.everything());
        CashFlow flow = CashFlow.of(scenario, plan(scenario));
        List<CrewPetrol> crews = CrewPetrol.of(scenario, Set.of("crew-1"));

        assertThat(crews).hasSize(1);
        assertThat(crews.get(0).litres()).isCloseTo(360, ROUNDING);
        assertThat(crews.get(0).fuelCost()).isCloseTo(540, ROUNDING);
        assertThat(crews.get(0).upkeepCost()).isCloseTo(360, ROUNDING);
        assertThat(flow.at(FlowKind.PETROL_SAVED, 0)).isZero();
        assertThat(flow.at(FlowKind.PETROL_SAVED, 1)).isCloseTo(900, ROUNDING);
        assertThat(flow.at(FlowKind.PETROL_SAVED, 3)).isCloseTo(540 * 1.03 * 1.03 + 360, ROUNDING);
    }

    @Test
    void petrolWithoutPricesIsWhatCrewsSay() {
        ScenarioText text = ScenarioText.tiny().column("crews.csv", "petrol_cost_per_year", "900");
        assertThat(CrewPetrol.of(Planned.load(text), Set.of("crew-1")))
                .containsExactly(new CrewPetrol("crew-1", 0, 900, 900, 0));
        assertThat(CrewPetrol.of(Planned.load(ScenarioText.tiny()), Set.of("crew-1")))
                .containsExactly(new CrewPetrol("crew-1", 0, 0, 0, 0));
        ScenarioText burning = ScenarioText.tiny()
                .column("tools.csv", "petrol_litres_per_hour", "1.2")
                .setting("finance", "{\"petrol_price_per_litre\": 1.5}");
        assertThat(CrewPetrol.of(Planned.load(burning), Set.of("crew-1")))
                .containsExactly(new CrewPetrol("crew-1", 360, 0, 540, 0));
        assertThat(CrewPetrol.of(
                        Planned.load(burning.column("crews.csv", "petrol_cost_per_year", "500")), Set.of("crew-1")))
                .containsExactly(new CrewPetrol("crew-1", 360, 500, 500, 0));
    }

    @Test
    void carbonIsPetrolsLessElectricitys() {
        Scenario scenario = Planned.load(FinanceText.everything());
        Plan plan = plan(scenario);
        double kilograms = 360 * 2.3477 - CashFlow.kwhPerYear(plan.depots()) * 0.4;

        assertThat(CashFlow.of(scenario, plan).at(FlowKind.CARBON_SAVED, 2)).isCloseTo(kilograms / 1000 * 50, ROUNDING);
    }

    // IRS Publication 946, table A-1, half-year convention (seen): 1,000 bought now, taxed at 25 %.
    @Test
    void theTaxShieldFollowsThePublishedTables() {
        assertThat(shield(0.2, 0.32, 0.192, 0.1152, 0.1152, 0.0576))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
                .containsExactly(0.0, 50.0, 80.0, 48.0, 28.8, 28.8, 14.4, 0.0, 0.0, 0.0, 0.0);
        assertThat(shield(0.1429, 0.2449, 0.1749, 0.1249, 0.0893, 0.0892, 0.0893, 0.0446))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class)
                .containsExactly(0.0, 35.725, 61.225, 43.725, 31.225, 22.325, 22.3, 22.325, 11.15, 0.0, 0.0);
    }

    private static List<Double> shield(Double... shares) {
        YearFlows flows = new YearFlows(new PresentCost(10, 0.05, 0));
        flows.add(FlowKind.PURCHASES, 0, -1_000);
        new TaxFlows(flows, 10, 0.25, List.of(shares)).add();
        return flows.byKind().get(FlowKind.TAX_SHIELD);
    }

    @Test
    void savingsAreTaxedAndSoIsAGainAtTheEnd() {
        // By hand, 2 years, 20 %: 100 is written off in halves of 40 and 60; sold for 30 with nothing left in the
        // books.
        YearFlows flows = new YearFlows(new PresentCost(2, 0.05, 0));
        flows.add(FlowKind.PURCHASES, 0, -100);
        flows.add(FlowKind.ENERGY, 1, -10);
        flows.add(FlowKind.PETROL_SAVED, 1, 60);
        flows.add(FlowKind.VALUE_AT_END, 2, 30);
        new TaxFlows(flows, 2, 0.2, List.of(0.4, 0.6)).add();

        assertThat(flows.byKind().get(FlowKind.TAX_SHIELD)).containsExactly(0.0, 8.0, 12.0);
        assertThat(flows.at(FlowKind.TAX_ON_SAVING, 1)).isCloseTo(-10, ROUNDING);
        assertThat(flows.at(FlowKind.TAX_ON_SAVING, 2)).isCloseTo(-6, ROUNDING);
    }

    @Test
    void whatIsNotWrittenOffByTheEndIsALoss() {
        // By hand, 1 year, 20 %: 60 of 100 is still in the books and sold for 30.
        YearFlows flows = new YearFlows(new PresentCost(1, 0.05, 0));
        flows.add(FlowKind.PURCHASES, 0, -100);
        flows.add(FlowKind.VALUE_AT_END, 1, 30);
        new TaxFlows(flows, 1, 0.2, List.of(0.4, 0.6)).add();

        assertThat(flows.at(FlowKind.TAX_SHIELD, 1)).isCloseTo(8, ROUNDING);
        assertThat(flows.at(FlowKind.TAX_ON_SAVING, 1)).isCloseTo(6, ROUNDING);
    }

    @Test
    void aPaymentWithinAYearIsCarriedToItsEnd() {
        PresentCost money = new PresentCost(4, 0.1, 0);
        YearFlows flows = new YearFlows(money);
        flows.add(FlowKind.REPLACEMENTS, 2.5, -100);

        // By hand: 100 x 1.1^0.5 at the end of year 3.
        assertThat(flows.at(FlowKind.REPLACEMENTS, 3)).isCloseTo(-104.880885, ROUNDING);
        assertThat(money.presentValue(flows.byKind().get(FlowKind.REPLACEMENTS)))
                .isCloseTo(-100 * money.factor(2.5), ROUNDING);
    }

    // Textbook homework (seen, recomputed): 15 %, 20000 and 8500 a year, worth 5000 after 3 years; 15000, 7000 and 3000
    // after 2.
    @Test
    void equivalentYearlyCostsOfTwoMachinesAreAsInTheTextbook() {
        assertThat(Appraisal.of(machine(3, 20_000, 8_500, 5_000)).yearlyCost()).isCloseTo(15_819.65, CENT);
        assertThat(Appraisal.of(machine(2, 15_000, 7_000, 3_000)).yearlyCost()).isCloseTo(14_831.40, CENT);
    }

    private static CashFlow machine(int years, double price, double yearly, double worth) {
        YearFlows flows = new YearFlows(new PresentCost(years, 0.15, 0));
        flows.add(FlowKind.PURCHASES, 0, -price);
        IntStream.rangeClosed(1, years).forEach(year -> flows.add(FlowKind.ENERGY, year, -yearly));
        flows.add(FlowKind.VALUE_AT_END, years, worth);
        return new CashFlow(new PresentCost(years, 0.15, 0), flows.byKind());
    }

    @Test
    void appraisalAgainstPetrolIsAsDocumented() {
        // Spreadsheet IRR documentation (seen, recomputed): -70000 12000 15000 18000 21000 26000 gives 8.6631 %.
        Map<FlowKind, List<Double>> flows = new EnumMap<>(FlowKind.class);
        for (FlowKind kind : FlowKind.values()) {
            flows.put(kind, List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0));
        }
        flows.put(FlowKind.PURCHASES, List.of(-70_000.0, 0.0, 0.0, 0.0, 0.0, 0.0));
        flows.put(FlowKind.PETROL_SAVED, List.of(0.0, 12_000.0, 15_000.0, 18_000.0, 21_000.0, 26_000.0));
        Appraisal appraisal = Appraisal.of(new CashFlow(new PresentCost(5, 0.086631, 0), flows));

        assertThat(appraisal.rate().rate().orElseThrow()).isCloseTo(0.086631, within(5e-7));
        assertThat(appraisal.netPresentValue()).isCloseTo(0, within(0.2));
        // By hand: 66,000 after four years, 4,000 of 26,000 in the fifth.
        assertThat(appraisal.paybackYears().orElseThrow()).isCloseTo(4 + 4.0 / 26, ROUNDING);
        assertThat(appraisal.presentCost()).isCloseTo(70_000, ROUNDING);
        assertThat(appraisal.petrolPresentCost()).isCloseTo(70_000, within(0.2));
    }

    @Test
    void aPlanThatSavesNothingNeverPaysBack() {
        Appraisal appraisal = Appraisal.of(machine(3, 20_000, 8_500, 5_000));

        assertThat(appraisal.paybackYears()).isEqualTo(OptionalDouble.empty());
        assertThat(appraisal.discountedPaybackYears()).isEmpty();
        assertThat(appraisal.rate().finding()).isEqualTo(ReturnRate.Finding.NO_CHANGE_OF_SIGN);
    }
}
