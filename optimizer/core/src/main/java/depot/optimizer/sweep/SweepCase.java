package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.sweep.change.Change;
import java.util.List;

/**
 * One case of a sweep.
 *
 * @param name unlike that of any other case of its table
 * @param table name of the line, frontier or grid it belongs to; "tornado" and "cases" for the others
 */
public record SweepCase(Part part, String table, String name, Purchases purchases, List<Change> changes) {

    /** What the base plan is called among cases. */
    public static final String BASE_NAME = "base plan";

    /** Parts of a sweep's file. */
    public enum Part {
        /** One at a time. */
        TORNADO,
        /** Along one change. */
        LINE,
        /** Along a budget. */
        FRONTIER,
        /** Pairs of two changes. */
        GRID,
        /** Named. */
        CASE
    }
}
