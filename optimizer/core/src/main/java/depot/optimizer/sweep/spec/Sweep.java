package depot.optimizer.sweep.spec;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Change.Subject;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a sweep's file asks for, found right.
 *
 * @param tornado changes one at a time, empty: none asked for
 * @param frontiers costs along budgets
 * @param losses empty: none asked for
 */
public record Sweep(
        String name,
        Optional<Tornado> tornado,
        List<Line> lines,
        List<Frontier> frontiers,
        List<Grid> grids,
        List<NamedCase> cases,
        Optional<Losses> losses) {
    /** Copies the lists. */
    public Sweep {
        lines = List.copyOf(lines);
        frontiers = List.copyOf(frontiers);
        grids = List.copyOf(grids);
        cases = List.copyOf(cases);
    }

    /** One at a time. */
    public record Tornado(Purchases purchases, List<Range> ranges) {}

    /** Two ends of one change. */
    public record Range(Subject subject, BigDecimal low, BigDecimal high) {}

    /** Values of one change, rising. */
    public record Axis(Subject subject, List<BigDecimal> values) {}

    /** Cost along one change. */
    public record Line(String name, Purchases purchases, Axis axis) {}

    /** Least cost for each of several budgets, all planned anew. */
    public record Frontier(String name, Axis axis) {}

    /** Cost for every pair of two changes. */
    public record Grid(String name, Purchases purchases, Axis rows, Axis columns) {}

    /** Changes that come together. */
    public record NamedCase(String name, Purchases purchases, List<Change> changes) {}

    /**
     * What may fail at each depot.
     *
     * @param chargersOut one charger after the other is out of order
     * @param onePackIn one pack in so many is lost
     * @param lateMinutes all crews are back later by so much
     */
    public record Losses(boolean chargersOut, OptionalInt onePackIn, OptionalInt lateMinutes) {}
}
