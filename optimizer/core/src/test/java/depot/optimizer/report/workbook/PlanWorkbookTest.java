package depot.optimizer.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.finance.Appraisal;
import depot.optimizer.finance.CashFlow;
import depot.optimizer.finance.FlowKind;
import depot.optimizer.finance.PresentCost;
import depot.optimizer.fixture.FinanceText;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.Words;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The workbook as an independent engine recalculates it, against finance's own reckoning: as planned, and after prices,
 * rates and horizon were changed in its cells.
 */
class PlanWorkbookTest {

    private static final Offset<Double> CENT = within(0.005);
    private static final Offset<Double> RATE = within(1e-6);

    private static final ScenarioText TEXT = FinanceText.everything();
    private static final Scenario SCENARIO = Planned.load(TEXT);
    private static final Plan PLAN = plan(SCENARIO);

    private static Plan plan(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan();
    }

    /** A change of the workbook's cells and the same change of the scenario's files. */
    private record Change(String name, UnaryOperator<Recalculated> cells, UnaryOperator<ScenarioText> files) {
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

    static List<Arguments> changes() {
        return List.of(
                        new Change("nothing", workbook -> workbook, text -> text),
                        setting("Horizon", 1, "years\": 10", "years\": 1"),
                        setting("Horizon", 7, "years\": 10", "years\": 7"),
                        setting("Horizon", 40, "years\": 10", "years\": 40"),
                        setting("Discount rate", 0, "rate\": 0.06", "rate\": 0"),
                        setting("Discount rate", 0.11, "rate\": 0.06", "rate\": 0.11"),
                        setting("Rise of electricity prices", -0.04, "growth\": 0.025", "growth\": -0.04"),
                        setting("Price of petrol", 2.6, "litre\": 1.5", "litre\": 2.6"),
                        setting("Rise of the price of petrol", 0, "growth\": 0.03", "growth\": 0"),
                        setting("Tax rate", 0, "tax_rate\": 0.25", "tax_rate\": 0"),
                        setting("Price of carbon dioxide", 500, "tonne\": 50", "tonne\": 500"),
                        new Change(
                                "price of a pack",
                                workbook -> workbook.set(2, 411.35, "Packs bought", "pack-500"),
                                text -> text.replace("pack_types.csv", "2.5,300,", "2.5,411.35,")),
                        new Change(
                                "price, installation and life of a charger",
                                workbook -> workbook.set(2, 177.7, "Chargers", "duo")
                                        .set(3, 12.5, "Chargers", "duo")
                                        .set(4, 0.6, "Chargers", "duo"),
                                text -> text.replace("charger_types.csv", "no,200,35,3.5", "no,177.7,12.5,0.6")),
                        new Change(
                                "standing charge",
                                workbook -> workbook.set(4, 0.55, "Standing charges", "flat"),
                                text -> text.replace("tariff_terms.csv", "flat,0.4,", "flat,0.55,")))
                .stream()
                .map(Arguments::of)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("changes")
    void recalculatesToWhatFinanceReckons(Change change) {
        CashFlow flow = CashFlow.of(Planned.load(change.files().apply(TEXT)), PLAN);
        Appraisal appraisal = Appraisal.of(flow);
        Recalculated workbook = change.cells().apply(Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN)));

        assertThat(workbook.result("Present cost of the plan")).isCloseTo(appraisal.presentCost(), CENT);
        assertThat(workbook.result("The same every year")).isCloseTo(appraisal.yearlyCost(), CENT);
        assertThat(workbook.result("Present cost of staying on petrol")).isCloseTo(appraisal.petrolPresentCost(), CENT);
        assertThat(workbook.result("Present value of the plan against petrol"))
                .isCloseTo(appraisal.netPresentValue(), CENT);
        same(workbook.resultText("Payback (years)"), appraisal.paybackYears(), Words.NEVER);
        same(workbook.resultText("Payback with interest (years)"), appraisal.discountedPaybackYears(), Words.NEVER);
        same(
                workbook.resultText("Internal rate of return against petrol"),
                appraisal.rate().rate(),
                "none");
        for (FlowKind kind : FlowKind.values()) {
            assertYears(workbook.yearly(Words.of(kind)), flow.byKind().get(kind), kind.name());
        }
        assertYears(workbook.yearly("All together, against petrol"), flow.net(), "net");
    }

    private static void assertYears(List<Double> columns, List<Double> flows, String what) {
        for (int year = 0; year < columns.size(); year++) {
            double expected = year < flows.size() ? flows.get(year) : 0;
            assertThat(columns.get(year)).as("%s in year %d", what, year).isCloseTo(expected, CENT);
        }
    }

    private static void same(String found, OptionalDouble expected, String none) {
        if (expected.isPresent()) {
            assertThat(Double.parseDouble(found)).isCloseTo(expected.getAsDouble(), RATE);
        } else {
            assertThat(found).startsWith(none);
        }
    }

    @Test
    void agreesWithPlanJsonToTheCent() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));

        assertThat(workbook.result("Present cost of the plan"))
                .isCloseTo(PLAN.certificate().cost(), CENT);
        assertThat(workbook.result("Difference")).isZero();
    }

    @Test
    void petrolThatIsPaidEitherWayIsACostAndNoLoss() {
        Scenario staying = Planned.load(ScenarioText.tiny()
                .column("crews.csv", "petrol_cost_per_year", "10")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,,\n"));
        Plan plan = plan(staying);
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(staying, plan));

        assertThat(workbook.result("Present cost of the plan"))
                .isCloseTo(plan.certificate().cost(), CENT);
        assertThat(workbook.result("Present cost of staying on petrol"))
                .isCloseTo(plan.certificate().cost(), CENT);
        assertThat(workbook.result("Present value of the plan against petrol")).isCloseTo(0, CENT);
    }

    @Test
    void agreesWithTheHandCalculationOfTheStarter() {
        Scenario starter = ScenarioLoader.load(Path.of("..", "..", "inputs", "starter"))
                .scenario()
                .orElseThrow();
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(starter, plan(starter)));

        // Worked out by hand on the scenario's page.
        assertThat(workbook.result("Present cost of the plan")).isCloseTo(4_020.50, CENT);
        assertThat(workbook.result("Difference")).isZero();
        assertThat(workbook.resultText("Internal rate of return against petrol"))
                .isEqualTo(Words.NO_PETROL);
        // By hand: eight packs wear at 1.6 a year over ten years and are back at their price; chargers are bought twice
        // and
        // mounted once; electricity is 250 + 146.10 a year.
        workbook.set(1, 10, "Horizon");
        assertThat(workbook.result("Present cost of the plan"))
                .isCloseTo(1.6 * 200 * 10 + (200 + 240) + (200 + 200) + 10 * (250 + 146.10), CENT);
    }

    @Test
    void aDearerKilowattHourCostsMoreByItsEnergy() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));
        double before = workbook.result("Present cost of the plan");
        double annuity = PresentCost.of(SCENARIO).electricityAnnuity();
        workbook.set(4, 0.41, "Energy", "flat at 0.3");

        assertThat(workbook.result("Present cost of the plan"))
                .isCloseTo(before + CashFlow.kwhPerYear(PLAN.depots()) * (0.41 - 0.30) * annuity, CENT);
    }

    @Test
    void textsThatLookLikeFormulasAreNeutralised() {
        Scenario hostile = Planned.load(TEXT.replace("scenario.json", "\"Tiny\"", "\"=1+1\""));
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(hostile, PLAN));

        assertThat(workbook.workbook().getSheet("Inputs").getRow(0).getCell(0).getStringCellValue())
                .isEqualTo("'=1+1: inputs");
    }

    @Test
    void derivedCellsAreFormulasThatAllWork() {
        Recalculated workbook = Recalculated.of(PlanWorkbook.of(SCENARIO, PLAN));

        assertThat(workbook.formulas()).hasSizeGreaterThan(1_000);
        assertThat(workbook.workbook().getNumberOfSheets()).isEqualTo(6);
        assertThat(workbook.workbook().getForceFormulaRecalculation())
                .as("asks to be worked out when it is opened")
                .isTrue();
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws InterruptedException {
        byte[] first = PlanWorkbook.of(SCENARIO, PLAN);
        // The library writes the time of writing in seconds.
        Thread.sleep(1_100);

        assertThat(PlanWorkbook.of(SCENARIO, PLAN)).isEqualTo(first);
    }
}
