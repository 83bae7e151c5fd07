package depot.optimizer.read;

import java.util.List;

/**
 * A CSV file as it stands.
 *
 * @param header names of the columns, on line {@code headerLine}
 * @param rows all rows that are not blank; none of them is ragged
 * @param whole whether every row could be read
 */
public record RawTable(String file, int headerLine, List<String> header, List<RawRow> rows, boolean whole) {
    /** Copies the lists. */
    public RawTable {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }
}
