package depot.optimizer.read;

import java.util.List;

/**
 * A row as it stands in its file.
 *
 * @param line line that it begins on, from 1
 * @param cells texts without surrounding blanks; fewer or more than the header has when the row is ragged
 */
public record RawRow(int line, List<String> cells) {
    /** Copies the cells. */
    public RawRow {
        cells = List.copyOf(cells);
    }
}
