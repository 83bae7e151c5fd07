package depot.optimizer.report;

import depot.optimizer.advice.Advice;
import depot.optimizer.advice.Alternative;
import depot.optimizer.advice.FleetAdvice;
import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.page.AdvicePages;
import depot.optimizer.report.page.Pages;
import depot.optimizer.report.table.AdviceFigures;
import depot.optimizer.report.table.AdviceTables;
import depot.optimizer.report.table.CsvTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes the answers to questions about a plan into one folder. */
public final class AdviceWriter {

    /** The page, by which the folder is known. */
    public static final String PAGE = "explain.html";

    private static final String THUMB_PLAN = "rules-of-thumb.json";

    private AdviceWriter() {}

    /**
     * Makes sure, before any work, that answers may go to a folder.
     *
     * @throws UnwritableRunException if something else is there
     */
    public static void requireReplaceable(Path folder) throws UnwritableRunException {
        new RunFolder(folder, PAGE).requireReplaceable();
    }

    /**
     * Writes answers, whole or not at all; those of the same name are replaced.
     *
     * @throws UnwritableRunException if they cannot be written; what was there is then as it was
     */
    public static void write(Path folder, Advice advice) throws UnwritableRunException {
        AdviceFigures figures = AdviceFigures.of(advice);
        SortedMap<String, String> files = new TreeMap<>();
        List<CsvTable> tables = AdviceTables.of(figures);
        tables.forEach(table -> files.put(table.fileName(), table.content()));
        files.put(
                TablesJson.FILE_NAME,
                TablesJson.write(tables.stream().map(CsvTable::layout).toList()));
        List<DepotPlan> thumb = advice.depots().stream()
                .flatMap(depot -> depot.thumb().stream())
                .map(ReplayedPlan::plan)
                .toList();
        Optional<Plan> fleet = advice.fleet().flatMap(FleetAdvice::thumb);
        fleet.ifPresent(whole -> files.put(THUMB_PLAN, PlanJson.write(solvedBy("rules of thumb", whole))));
        if (!thumb.isEmpty() && fleet.isEmpty()) {
            files.put(THUMB_PLAN, PlanJson.write(plan(advice.plan(), "rules of thumb", thumb)));
        }
        for (Map.Entry<Alternative, String> other : figures.planFiles().entrySet()) {
            ReplayedPlan found = other.getKey().answer().plan().orElseThrow();
            Plan whole = found.fleet()
                    .orElseGet(() -> plan(advice.plan(), advice.plan().solver(), List.of(found.plan())));
            files.put(other.getValue(), PlanJson.write(whole));
        }
        files.put(PAGE, Pages.of(AdvicePages.of(figures)));
        new RunFolder(folder, PAGE).replace(draft -> writeAll(draft, files));
    }

    private static Plan solvedBy(String solver, Plan plan) {
        return new Plan(
                plan.formatVersion(),
                plan.scenario(),
                plan.currency(),
                plan.inputHashes(),
                solver,
                plan.settings(),
                plan.certificate(),
                plan.fleetCosts(),
                plan.proof(),
                plan.depots());
    }

    /** Some depots' plans as a plan of their own. */
    private static Plan plan(Plan asked, String solver, List<DepotPlan> depots) {
        double cost = depots.stream()
                .mapToDouble(depot -> depot.stop().certificate().cost())
                .sum();
        double bound = depots.stream()
                .mapToDouble(depot -> depot.stop().certificate().bound())
                .sum();
        return new Plan(
                asked.formatVersion(),
                asked.scenario(),
                asked.currency(),
                asked.inputHashes(),
                solver,
                asked.settings(),
                Certificate.of(cost, bound, asked.settings().relativeGap()),
                depots);
    }

    private static void writeAll(Path folder, SortedMap<String, String> files) throws IOException {
        for (var file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
