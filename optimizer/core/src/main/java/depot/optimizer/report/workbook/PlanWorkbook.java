package depot.optimizer.report.workbook;

import depot.optimizer.finance.CashFlow;
import depot.optimizer.finance.CrewPetrol;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;

/** workbook.xlsx: a plan's cost from its inputs to its results, in formulas that recalculate when an input is changed. */
public final class PlanWorkbook {

    /** Name of the file in a run's folder. */
    public static final String FILE_NAME = "workbook.xlsx";

    private PlanWorkbook() {}

    /**
     * The workbook of a plan; the same plan always gives the same bytes.
     *
     * @throws IllegalArgumentException if the plan names a depot that the scenario does not list
     */
    public static byte[] of(Scenario scenario, Plan plan) {
        PlanLines lines = PlanLines.of(scenario, plan);
        return WorkbookBytes.of(workbook -> {
            InputsSheet inputs = new InputsSheet(workbook, scenario, lines);
            OrdersSheet orders = new OrdersSheet(workbook, inputs, lines);
            FlowFormulas.Sheets sheets = new FlowFormulas.Sheets(
                    new PurchasesSheet(workbook, inputs, lines, orders),
                    orders,
                    petrol(workbook, inputs, scenario, plan, lines),
                    new ItemsSheet(workbook, inputs, lines));
            YearCells cells = new YearlySheet(workbook, inputs, lines, sheets).cells();
            new ResultsSheet(workbook, cells, plan.certificate().cost(), plan.currency());
        });
    }

    private static PetrolSheet petrol(
            Workbook workbook, InputsSheet inputs, Scenario scenario, Plan plan, PlanLines lines) {
        List<Set<String>> withPacks = new ArrayList<>();
        for (Phase phase : lines.phases()) {
            List<DepotPlan> depots = plan.depots().stream()
                    .filter(depot -> depot.phase().equals(phase.id()))
                    .toList();
            withPacks.add(CashFlow.crews(scenario, depots).stream()
                    .map(CrewPetrol::crew)
                    .collect(Collectors.toSet()));
        }
        Set<String> all = withPacks.stream().flatMap(Set::stream).collect(Collectors.toSet());
        return new PetrolSheet(workbook, inputs, lines, CrewPetrol.of(scenario, all), withPacks);
    }
}
