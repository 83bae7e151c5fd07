package depot.optimizer.report;

import depot.optimizer.report.page.Pages;
import depot.optimizer.report.page.SweepPages;
import depot.optimizer.report.table.CsvTable;
import depot.optimizer.report.table.SweepFigures;
import depot.optimizer.report.table.SweepTables;
import depot.optimizer.sweep.SweepResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;

/** Writes everything that a sweep gives out into one folder. */
public final class SweepWriter {

    /** The page. */
    public static final String PAGE = "sweep.html";

    private SweepWriter() {}

    /**
     * Makes sure, before any work, that a sweep may go to a folder.
     *
     * @throws UnwritableRunException if something else is there
     */
    public static void requireReplaceable(Path runFolder) throws UnwritableRunException {
        new RunFolder(runFolder, SweepTables.ALL).requireReplaceable();
    }

    /**
     * Writes a sweep, whole or not at all; a sweep of the same name is replaced.
     *
     * @throws UnwritableRunException if it cannot be written; an existing sweep is then as it was
     */
    public static void write(Path runFolder, SweepResult result) throws UnwritableRunException {
        SweepFigures figures = SweepFigures.of(result);
        SortedMap<String, String> files = new TreeMap<>();
        for (CsvTable table : SweepTables.of(figures)) {
            files.put(table.fileName(), table.content());
        }
        files.put(PAGE, Pages.of(SweepPages.of(figures)));
        new RunFolder(runFolder, SweepTables.ALL).replace(folder -> writeAll(folder, files));
    }

    private static void writeAll(Path folder, SortedMap<String, String> files) throws IOException {
        for (var file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
    }
}
