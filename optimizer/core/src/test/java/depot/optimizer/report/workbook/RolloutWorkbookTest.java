package depot.optimizer.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.finance.Appraisal;
import depot.optimizer.finance.CashFlow;
import depot.optimizer.finance.FlowKind;
import depot.optimizer.fixture.FinanceText;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.RolloutTable;
import depot.optimizer.report.table.Words;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The workbook of a plan over several phases, as an independent engine recalculates it, against finance's own reckoning and closed formulas. */
class RolloutWorkbookTest {

    static final Offset<Double> CENT = within(0.005);

    /** Two depots; two crews change at once, the third after three years; every kind of yearly flow, and a budget. */
    static final ScenarioText TEXT = FinanceText.everything()
            .setting("solve", "{\"gap\": 0.01, \"threads\": 1}")
            .rows("depots.csv", "south,South yard,flat,400,3,63,10")
            .rows("circuits.csv", "south-1,south,230,1,16,4,150")
            .rows("crews.csv", "crew-2,north,8,60,700", "crew-3,south,8,60,800")
            .rows(
                    "stops.csv",
                    "summer,Mon-Fri,crew-2,1,north,,07:00",
                    "summer,Mon-Fri,crew-2,2,park,08:00,15:00",
                    "summer,Mon-Fri,crew-2,3,north,16:00,",
                    "summer,Mon-Fri,crew-3,1,south,,07:00",
                    "summer,Mon-Fri,crew-3,2,park,08:00,15:00",
                    "summer,Mon-Fri,crew-3,3,south,16:00,")
            .rows("work.csv", "summer,Mon-Fri,crew-2,2,trimmer,3", "summer,Mon-Fri,crew-3,2,trimmer,1")
            .table("phases.csv", "phase,year,budget\nfirst,0,2500\nsecond,3,\n")
            .table(
                    "crew_phases.csv",
                    "crew,earliest_phase,latest_phase\ncrew-1,first,first\ncrew-2,second,second\ncrew-3,first,first\n");

    private static final Scenario SCENARIO = Planned.load(TEXT);
    private static final Plan PLAN = plan(SCENARIO);

    static Plan plan(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan();
    }

    /** A change of the workbook's cells and the same change of the scenario's files. */
    record Change(String name, UnaryOperator<Recalculated> cells, UnaryOperator<ScenarioText> files) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Change setting(String label, double value, String old, String replacement) {
        return new Change(
                label + " " + value,
                workbook -> workbook.set(1, value, label),
                text -> text.replace("scenario.json", old, replacement));
    }

    private static Change begins(int year) {
        return new Change(
                "second phase in year " + year,
                workbook -> workbook.set(1, year, "second"),
                text -> text.replace("phases.csv", "second,3", "second," + year));
    }

    static Stream<Change> changes() {
        return Stream.of(
                new Change("nothing", workbook -> workbook, text -> text),
                setting("Horizon", 4, "years\": 10", "years\": 4"),
                setting("Horizon", 17, "years\": 10", "years\": 17"),
                setting("Horizon", 40, "years\": 10", "years\": 40"),
                setting("Discount rate", 0, "rate\": 0.06", "rate\": 0"),
                setting("Discount rate", 0.11, "rate\": 0.06", "rate\": 0.11"),
                setting("Rise of electricity prices", -0.04, "growth\": 0.025", "growth\": -0.04"),
                setting("Price of petrol", 2.6, "litre\": 1.5", "litre\": 2.6"),
                setting("Rise of the price of petrol", 0, "growth\": 0.03", "growth\": 0"),
                setting("Tax rate", 0, "tax_rate\": 0.25", "tax_rate\": 0"),
                setting("Price of carbon dioxide", 500, "tonne\": 50", "tonne\": 500"),
                begins(1),
                begins(5),
                begins(9),
                new Change(
                        "price of a pack",
                        workbook -> workbook.set(2, 411.35, "Packs bought", "pack-500"),
                        text -> text.replace("pack_types.csv", "2.5,300,", "2.5,411.35,")),
                new Change(
                        "price, installation and life of a charger",
                        workbook -> workbook.set(2, 177.7, "Chargers", "duo")
                                .set(3, 12.5, "Chargers", "duo")
                                .set(4, 0.6, "Chargers", "duo"),
                        text -> text.replace("charger_types.csv", "no,200,35,3.5", "no,177.7,12.5,0.6")));
    }

    @ParameterizedTest
    @MethodSource("changes")
    void recalculatesToWhatFinanceReckons(Change change) {
        CashFlow flow = CashFlow.of(Planned.load(change.files().apply(TEXT)), PLAN);
        assertAgrees(change.cells().apply(Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN))), flow);
    }

    /** Every kind of flow in every year, and what they come to. */
    static void assertAgrees(Recalculated workbook, CashFlow flow) {
        Appraisal appraisal = Appraisal.of(flow);
        assertThat(workbook.result("Present cost of the plan")).isCloseTo(appraisal.presentCost(), CENT);
        assertThat(workbook.result("Present cost of staying on petrol")).isCloseTo(appraisal.petrolPresentCost(), CENT);
        assertThat(workbook.result("Present value of the plan against petrol"))
                .isCloseTo(appraisal.netPresentValue(), CENT);
        for (FlowKind kind : FlowKind.values()) {
            assertYears(workbook.yearly(Words.of(kind)), flow.byKind().get(kind), kind.name());
        }
        assertYears(workbook.yearly("All together, against petrol"), flow.net(), "net");
    }

    static void assertYears(List<Double> columns, List<Double> flows, String what) {
        for (int year = 0; year < columns.size(); year++) {
            double expected = year < flows.size() ? flows.get(year) : 0;
            assertThat(columns.get(year)).as("%s in year %d", what, year).isCloseTo(expected, CENT);
        }
    }

    @Test
    void flowsBeginWhenTheirPhasesDo() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));
        List<Double> purchases = workbook.yearly(Words.of(FlowKind.PURCHASES));
        List<Double> petrol = workbook.yearly(Words.of(FlowKind.PETROL));

        assertThat(purchases.get(0)).isNegative();
        assertThat(purchases.get(3)).isNegative();
        assertThat(purchases.subList(1, 3)).containsOnly(0.0);
        // crew-2 stays on petrol for the three years until the second phase begins.
        assertThat(petrol.subList(0, 6)).containsExactly(0.0, -700.0, -700.0, -700.0, 0.0, 0.0);
        assertThat(workbook.result("Difference")).isZero();
        assertThat(workbook.result("Present cost of the plan"))
                .isCloseTo(PLAN.certificate().cost(), CENT);
    }

    @Test
    void whatEachPhaseSpendsIsThereWithItsBudget() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));
        List<RolloutTable.Step> steps = RolloutTable.steps(new Catalog(SCENARIO), PLAN);

        for (int phase = 1; phase <= 2; phase++) {
            RolloutTable.Step step = steps.get(phase - 1);
            assertThat(workbook.spent(step.phase().id())).isCloseTo(step.spent().doubleValue(), CENT);
        }
        assertThat(workbook.leftOf("first"))
                .isCloseTo(2500 - steps.get(0).spent().doubleValue(), CENT);
    }

    @Test
    void thePlanHasWhatTheTestsAreAbout() {
        assertThat(PLAN.depots()).hasSize(4);
        assertThat(PLAN.depots().stream().map(DepotPlan::onPetrol)).contains(List.of("crew-2"));
        assertThat(PLAN.depots().stream()
                        .flatMap(depot -> depot.costs().stream())
                        .map(CostLine::category))
                .contains(
                        CostLine.Category.PACKS,
                        CostLine.Category.PACK_WEAR,
                        CostLine.Category.CHARGERS,
                        CostLine.Category.CIRCUITS,
                        CostLine.Category.ENERGY,
                        CostLine.Category.DEMAND,
                        CostLine.Category.STANDING,
                        CostLine.Category.CREW_BASES,
                        CostLine.Category.PETROL);
    }
}
