package depot.optimizer.generate;

import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** A CSV table (RFC 4180, but with plain line feeds) with the dictionary's columns, row by row. */
final class TableText {
    private static final String LINE_END = "\n";

    private final Table table;
    private final StringBuilder text = new StringBuilder();
    private int rows;

    private TableText(Table table) {
        this.table = table;
        addLine(table.fields().stream().map(Field::name).toList());
    }

    /** A table with a row for each of the records, filled by the writer. */
    static <R> TableText of(Table table, List<R> records, BiConsumer<Row, R> writer) {
        TableText text = new TableText(table);
        for (R single : records) {
            Row row = new Row(table);
            writer.accept(row, single);
            text.addLine(row.cells());
            text.rows++;
        }
        return text;
    }

    String file() {
        return table.file();
    }

    boolean empty() {
        return rows == 0;
    }

    /** Whether a scenario may do without the table. */
    boolean optional() {
        return table.presence() == Presence.OPTIONAL;
    }

    String text() {
        return text.toString();
    }

    private void addLine(List<String> cells) {
        text.append(String.join(",", cells.stream().map(TableText::quoted).toList()))
                .append(LINE_END);
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(character -> ",\"\r\n".indexOf(character) >= 0);
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    /** Cells of one row; a column that is not put stays blank. */
    static final class Row {
        private final Table table;
        private final String[] cells;

        private Row(Table table) {
            this.table = table;
            cells = new String[table.fields().size()];
            Arrays.fill(cells, "");
        }

        <T> Row put(Field<T> field, T value) {
            cells[table.indexOf(field)] = FieldText.of(field, value);
            return this;
        }

        /** Leaves the cell blank when there is no value. */
        <T> Row put(Field<T> field, Optional<T> value) {
            value.ifPresent(present -> put(field, present));
            return this;
        }

        private List<String> cells() {
            return new ArrayList<>(Arrays.asList(cells));
        }
    }
}
