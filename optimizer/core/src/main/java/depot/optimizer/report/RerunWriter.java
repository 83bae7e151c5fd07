package depot.optimizer.report;

import depot.optimizer.report.page.Pages;
import depot.optimizer.report.page.RerunPages;
import depot.optimizer.report.table.CsvTable;
import depot.optimizer.report.table.RerunFigures;
import depot.optimizer.report.table.RerunTables;
import depot.optimizer.rerun.RerunResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes a rerun into one folder: all that any run gives out, and what it changes against the earlier one. */
public final class RerunWriter {

    /** The page that says what changes. */
    public static final String PAGE = "rerun.html";

    private RerunWriter() {}

    /**
     * Writes a rerun, whole or not at all; a run of the same name is replaced.
     *
     * @param inputs the changed tables
     * @throws UnwritableRunException if it cannot be written; an existing run is then as it was
     */
    public static void write(Path runFolder, RerunFigures figures, RunExtras inputs) throws UnwritableRunException {
        List<CsvTable> tables = RerunTables.of(figures);
        SortedMap<String, byte[]> files = new TreeMap<>();
        tables.forEach(table -> files.put(table.fileName(), utf8(table.content())));
        files.put(PAGE, utf8(Pages.of(RerunPages.of(figures))));
        RerunResult result = figures.result();
        RunWriter.write(
                runFolder,
                result.scenario(),
                result.plan(),
                result.replay(),
                result.shortages(),
                inputs.and(files, tables));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
