package depot.optimizer.report.compare;

import depot.optimizer.report.table.RerunTables;
import depot.optimizer.scenario.Owned;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pieces that earlier runs bought and a run's plan does not use, read back from its folder. */
public final class RunStore {
    private RunStore() {}

    /**
     * The pieces; none for a run that did not start from another one.
     *
     * @throws UnreadableRunException if the table is there and cannot be used
     */
    public static List<Owned> read(Path run) throws UnreadableRunException {
        if (!Files.exists(run.resolve(RerunTables.STORE))) {
            return List.of();
        }
        RunTable table = RunTable.read(run, RerunTables.STORE);
        List<Owned> rows = new ArrayList<>();
        for (int row = 0; row < table.size(); row++) {
            String crew = table.text(row, "crew");
            double pieces = table.number(row, "pieces");
            if (pieces != Math.rint(pieces) || pieces < 1 || pieces > Integer.MAX_VALUE) {
                throw new UnreadableRunException("%s, line %d, column pieces: \"%s\" is no number of pieces."
                        .formatted(run.resolve(RerunTables.STORE), row + 2, table.text(row, "pieces")));
            }
            rows.add(new Owned(
                    table.text(row, "depot"),
                    Optional.empty(),
                    crew.isEmpty() ? Optional.empty() : Optional.of(crew),
                    table.text(row, "item"),
                    (int) pieces));
        }
        return List.copyOf(rows);
    }
}
