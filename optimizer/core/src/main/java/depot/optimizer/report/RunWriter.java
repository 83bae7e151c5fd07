package depot.optimizer.report;

import depot.optimizer.finance.CashFlow;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.TrialReport;
import depot.optimizer.report.page.Pages;
import depot.optimizer.report.table.CashFlowTables;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.CircuitScheduleTable;
import depot.optimizer.report.table.CostTables;
import depot.optimizer.report.table.CsvTable;
import depot.optimizer.report.table.PackCounts;
import depot.optimizer.report.table.PlacementTable;
import depot.optimizer.report.table.Purchases;
import depot.optimizer.report.table.ReplayTables;
import depot.optimizer.report.table.RolloutTable;
import depot.optimizer.report.table.ScheduleTables;
import depot.optimizer.report.table.ShortageTable;
import depot.optimizer.report.table.TableLayout;
import depot.optimizer.report.table.TrialTable;
import depot.optimizer.report.table.TripTables;
import depot.optimizer.report.table.VisitTable;
import depot.optimizer.report.workbook.PlanWorkbook;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes everything that a run gives out into one folder. */
public final class RunWriter {

    private RunWriter() {}

    /**
     * Writes a run without trials.
     *
     * @throws UnwritableRunException if it cannot be written; an existing run is then as it was
     * @throws IllegalArgumentException if the plan names something that the scenario does not list
     */
    public static void write(
            Path runFolder, Scenario scenario, Plan plan, ReplayReport replay, List<ExplainedShortage> shortages)
            throws UnwritableRunException {
        write(runFolder, scenario, plan, replay, shortages, RunExtras.NONE);
    }

    /** The same, with more in the folder. */
    public static void write(
            Path runFolder,
            Scenario scenario,
            Plan plan,
            ReplayReport replay,
            List<ExplainedShortage> shortages,
            RunExtras extras)
            throws UnwritableRunException {
        write(runFolder, scenario, plan, replay, shortages, extras, Optional.empty());
    }

    /**
     * The same, with more in the folder and with days drawn at random.
     *
     * @param trials empty: none were asked for
     */
    public static void write(
            Path runFolder,
            Scenario scenario,
            Plan plan,
            ReplayReport replay,
            List<ExplainedShortage> shortages,
            RunExtras extras,
            Optional<TrialReport> trials)
            throws UnwritableRunException {
        SortedMap<String, byte[]> files = files(scenario, plan, replay, shortages, extras, trials);
        new RunFolder(runFolder).replace(folder -> writeAll(folder, files));
    }

    /** All made before the first is written: a mistake in the plan shows before the disk is touched. */
    private static SortedMap<String, byte[]> files(
            Scenario scenario,
            Plan plan,
            ReplayReport replay,
            List<ExplainedShortage> shortages,
            RunExtras extras,
            Optional<TrialReport> trials) {
        Catalog catalog = new Catalog(scenario);
        CashFlow flow = CashFlow.of(scenario, plan);
        SortedMap<String, byte[]> files = new TreeMap<>();
        Pages.of(catalog, plan, replay, shortages, trials).forEach((name, page) -> files.put(name, utf8(page)));
        files.put(PlanJson.FILE_NAME, utf8(PlanJson.write(plan)));
        files.put(PlanWorkbook.FILE_NAME, PlanWorkbook.of(scenario, plan));
        files.put(DepotsGeoJson.FILE_NAME, utf8(DepotsGeoJson.write(catalog, plan, replay)));
        files.putAll(extras.files());
        List<CsvTable> tables = new ArrayList<>(tables(scenario, flow, plan, replay, shortages));
        VisitTable.of(catalog, plan).ifPresent(tables::add);
        tables.addAll(extras.tables());
        trials.map(TrialTable::of).ifPresent(tables::add);
        tables.forEach(table -> files.put(table.fileName(), utf8(table.content())));
        List<TableLayout> layouts = tables.stream().map(CsvTable::layout).toList();
        files.put(TablesJson.FILE_NAME, utf8(TablesJson.write(layouts)));
        return files;
    }

    private static List<CsvTable> tables(
            Scenario scenario, CashFlow flow, Plan plan, ReplayReport replay, List<ExplainedShortage> shortages) {
        Catalog catalog = new Catalog(scenario);
        return List.of(
                Purchases.table(catalog, plan),
                PlacementTable.of(catalog, plan),
                CircuitScheduleTable.of(catalog, plan, replay),
                PackCounts.table(catalog, plan),
                ScheduleTables.loads(plan),
                ScheduleTables.feeds(plan),
                TripTables.carried(plan),
                TripTables.roadCharges(plan),
                TripTables.kits(plan),
                CostTables.costs(plan),
                CostTables.energy(plan),
                CostTables.check(replay, plan.currency()),
                RolloutTable.of(catalog, plan),
                CashFlowTables.yearly(flow, plan.currency()),
                CashFlowTables.figures(scenario, flow),
                ReplayTables.days(replay, plan.currency()),
                ReplayTables.circuitLoad(replay),
                ReplayTables.loadTiming(replay),
                ReplayTables.violations(replay),
                ShortageTable.of(plan.currency(), shortages));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void writeAll(Path folder, SortedMap<String, byte[]> files) throws IOException {
        for (var file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }
}
