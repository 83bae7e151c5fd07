package depot.optimizer.report.compare;

import depot.optimizer.report.table.StandingLayouts;
import depot.optimizer.rerun.Standing;
import depot.optimizer.scenario.Owned;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** What runs before a run left, read back from its folder. */
public final class RunStanding {
    private RunStanding() {}

    /**
     * What they left; nothing for a run whose tables do not list it.
     *
     * @throws UnreadableRunException if a table is there and cannot be used
     */
    public static Standing read(Path run) throws UnreadableRunException {
        if (!Files.exists(run.resolve(StandingLayouts.THERE))) {
            return Standing.NONE;
        }
        RunTable table = RunTable.read(run, StandingLayouts.THERE);
        List<Owned> pieces = new ArrayList<>();
        List<String> circuits = new ArrayList<>();
        List<String> supplies = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            String what = table.text(row, "what");
            if (what.equals(StandingLayouts.CIRCUIT)) {
                circuits.add(table.text(row, "item"));
            } else if (what.equals(StandingLayouts.SUPPLY)) {
                supplies.add(table.text(row, "depot"));
            } else {
                pieces.add(piece(run, table, row));
            }
        }
        return new Standing(pieces, circuits, supplies, begun(run));
    }

    private static Owned piece(Path run, RunTable table, int row) throws UnreadableRunException {
        double count = table.number(row, "pieces");
        if (count != Math.rint(count) || Math.abs(count) > Integer.MAX_VALUE) {
            throw new UnreadableRunException("%s, line %d, column pieces: \"%s\" is no number of pieces."
                    .formatted(run.resolve(StandingLayouts.THERE), row + 2, table.text(row, "pieces")));
        }
        String crew = table.text(row, "crew");
        return new Owned(
                table.text(row, "depot"),
                Optional.empty(),
                crew.isEmpty() ? Optional.empty() : Optional.of(crew),
                table.text(row, "item"),
                (int) count);
    }

    private static SortedMap<String, Double> begun(Path run) throws UnreadableRunException {
        RunTable table = RunTable.read(run, StandingLayouts.BEGUN);
        SortedMap<String, Double> used = new TreeMap<>();
        for (int row = 0; row < table.size(); row++) {
            used.put(table.text(row, "limit"), table.number(row, "used"));
        }
        return used;
    }
}
