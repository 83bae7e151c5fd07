package depot.optimizer.report.table;

import java.util.List;

/**
 * A table of a run before it has rows.
 *
 * @param file its name in the run's folder
 * @param rowPer what one row stands for
 * @param columns from left to right
 */
public record TableLayout(String file, String rowPer, List<OutputColumn> columns) {

    /** Copies the columns. */
    public TableLayout {
        columns = List.copyOf(columns);
    }

    static TableLayout of(String file, String rowPer, OutputColumn... columns) {
        return new TableLayout(file, rowPer, List.of(columns));
    }

    /** Name of the file without its ending. */
    public String name() {
        return file.substring(0, file.lastIndexOf('.'));
    }
}
