package depot.optimizer.check;

import depot.optimizer.dictionary.Table;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table whose cells were read into values.
 *
 * @param rows all rows, sound or not
 * @param complete whether every row of the file is here
 */
record TypedTable(Table table, List<TypedRow> rows, boolean complete) {
    TypedTable {
        rows = List.copyOf(rows);
    }

    /** Whether every row of the file is here and sound, so that what the table does not say is really not there. */
    boolean whole() {
        return complete && rows.stream().allMatch(TypedRow::sound);
    }

    /** Rows that records can be made of. */
    Stream<TypedRow> sound() {
        return rows.stream().filter(TypedRow::sound);
    }
}
