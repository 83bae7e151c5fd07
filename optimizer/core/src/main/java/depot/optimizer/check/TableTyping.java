package depot.optimizer.check;

import depot.optimizer.check.TypedRow.Place;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Table;
import depot.optimizer.read.RawRow;
import depot.optimizer.read.RawTable;
import depot.optimizer.read.ReadProblem;
import java.util.ArrayList;
import java.util.List;

/** Matches the columns of a raw table with the dictionary's and reads its cells into values. */
final class TableTyping {
    private TableTyping() {}

    static TypedTable read(Table table, RawTable raw, Findings findings) {
        boolean headerComplete = checkHeader(table, raw, findings);
        int[] columns = table.fields().stream()
                .mapToInt(field -> raw.header().indexOf(field.name()))
                .toArray();
        if (!headerComplete) {
            // Without a column every row would be reported; the header's finding says it once.
            return new TypedTable(table, List.of(), false);
        }
        List<TypedRow> rows = new ArrayList<>();
        for (RawRow row : raw.rows()) {
            rows.add(TypedRow.read(
                    table,
                    index -> columns[index] < 0 ? "" : row.cells().get(columns[index]),
                    index -> new Place(row.line(), columns[index] + 1),
                    findings));
        }
        return new TypedTable(table, rows, raw.whole());
    }

    private static boolean checkHeader(Table table, RawTable raw, Findings findings) {
        for (int index = 0; index < raw.header().size(); index++) {
            String name = raw.header().get(index);
            if (table.field(name).isEmpty()) {
                findings.error(problem(raw, index + 1, name, "no column of this table", columnNames(table, name)));
            }
        }
        boolean complete = true;
        for (Field<?> field : table.fields()) {
            if (field.presence() == Presence.REQUIRED && !raw.header().contains(field.name())) {
                complete = false;
                findings.error(problem(
                        raw, 0, field.name(), "the column is missing", "add it; what it is: " + field.meaning()));
            }
        }
        return complete;
    }

    /** The column that was meant, when one is near; else all of them. */
    private static String columnNames(Table table, String name) {
        List<String> names = table.fields().stream().map(Field::name).toList();
        return NearestKey.nearest(name.replaceAll("[ -]", "_"), names)
                .map(column -> "maybe " + column)
                .orElseGet(() -> "columns: " + String.join(", ", names));
    }

    private static ReadProblem problem(RawTable raw, int position, String column, String message, String hint) {
        String value = position == 0 ? "" : column;
        return new ReadProblem(raw.file(), raw.headerLine(), column, position, value, message, hint);
    }
}
