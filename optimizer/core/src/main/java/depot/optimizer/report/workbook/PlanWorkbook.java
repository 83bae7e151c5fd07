package depot.optimizer.report.workbook;

import depot.optimizer.finance.CashFlow;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;

/** workbook.xlsx: a plan's cost from its inputs to its results, in formulas that recalculate when an input is changed. */
public final class PlanWorkbook {

    /** Name of the file in a run's folder. */
    public static final String FILE_NAME = "workbook.xlsx";

    private PlanWorkbook() {}

    /**
     * The workbook of a plan for a single phase; the same plan always gives the same bytes.
     *
     * @throws IllegalArgumentException if the plan names a depot that the scenario does not list
     */
    public static byte[] of(Scenario scenario, Plan plan) {
        PlanLines lines = PlanLines.of(scenario, plan);
        return WorkbookBytes.of(workbook -> {
            InputsSheet inputs = new InputsSheet(workbook, scenario, lines);
            PurchasesSheet purchases = new PurchasesSheet(workbook, inputs, lines);
            PetrolSheet petrol = new PetrolSheet(workbook, inputs, CashFlow.crews(scenario, plan.depots()));
            ItemsSheet items = new ItemsSheet(workbook, inputs, lines);
            YearCells cells = new YearlySheet(workbook, inputs, purchases, petrol, items).cells();
            new ResultsSheet(workbook, cells, plan.certificate().cost(), plan.currency());
        });
    }
}
