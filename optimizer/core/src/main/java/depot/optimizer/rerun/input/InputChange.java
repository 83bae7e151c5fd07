package depot.optimizer.rerun.input;

/**
 * A change of a scenario's tables.
 *
 * @param table name of the file
 * @param row key of the row, such as "crew N1" or "season summer, crew N1, stop 2, days Mon-Fri"; empty: a setting
 * @param column the column or setting that changed; empty: the whole row
 * @param before what stood there: a cell, or the row's other cells; empty: nothing
 * @param after what stands there now; empty: nothing
 */
public record InputChange(String table, String row, Kind kind, String column, String before, String after) {

    /** Kinds of change. */
    public enum Kind {
        /** A row that was not there. */
        ROW_ADDED("row added"),
        /** A row that is no longer there. */
        ROW_REMOVED("row removed"),
        /** Another value in a row that stayed, or of a setting. */
        CELL_CHANGED("cell changed");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In plain words. */
        public String words() {
            return words;
        }
    }
}
