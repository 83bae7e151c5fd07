package depot.optimizer.rerun.input;

import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.Table;
import depot.optimizer.read.RawTable;
import depot.optimizer.rerun.input.InputChange.Kind;
import depot.optimizer.rerun.input.KeyedRow.Cell;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Compares two versions of a table, day by day where its rows name days, and puts days that change alike together again. */
final class TableChanges {

    /** A row on one day; the number tells rows of the same name apart. */
    private record Name(List<Object> key, DayOfWeek day, int number) {}

    /** A change on any day. */
    private record Change(List<Cell> key, Kind kind, String column, String before, String after) {}

    private final Table table;
    private final Map<Change, EnumSet<DayOfWeek>> changes = new LinkedHashMap<>();

    private TableChanges(Table table) {
        this.table = table;
    }

    static List<InputChange> between(Table table, Optional<RawTable> before, Optional<RawTable> after) {
        TableChanges changes = new TableChanges(table);
        changes.compare(changes.named(before), changes.named(after));
        return changes.list();
    }

    private Map<Name, KeyedRow> named(Optional<RawTable> raw) {
        Map<Name, KeyedRow> rows = new LinkedHashMap<>();
        for (KeyedRow row : raw.map(all -> KeyedRow.of(table, all)).orElse(List.of())) {
            List<Object> key = row.key().stream().map(Cell::value).toList();
            for (DayOfWeek day : row.days()) {
                int number = 0;
                while (rows.putIfAbsent(new Name(key, day, number), row) != null) {
                    number++;
                }
            }
        }
        return rows;
    }

    private void compare(Map<Name, KeyedRow> before, Map<Name, KeyedRow> after) {
        before.forEach((name, row) -> {
            if (!after.containsKey(name)) {
                add(name, new Change(row.key(), Kind.ROW_REMOVED, "", words(row.values()), ""));
            }
        });
        after.forEach((name, row) -> {
            KeyedRow old = before.get(name);
            if (old == null) {
                add(name, new Change(row.key(), Kind.ROW_ADDED, "", "", words(row.values())));
            } else {
                compare(name, old, row);
            }
        });
    }

    private void compare(Name name, KeyedRow old, KeyedRow row) {
        for (int c = 0; c < row.values().size(); c++) {
            Cell then = old.values().get(c);
            Cell now = row.values().get(c);
            if (!now.means(then)) {
                String column = now.field().name();
                add(name, new Change(row.key(), Kind.CELL_CHANGED, column, then.text(), now.text()));
            }
        }
    }

    private void add(Name name, Change change) {
        changes.computeIfAbsent(change, none -> EnumSet.noneOf(DayOfWeek.class)).add(name.day());
    }

    private static String words(List<Cell> cells) {
        return cells.stream()
                .filter(cell -> !cell.text().isEmpty())
                .map(Cell::words)
                .collect(Collectors.joining(", "));
    }

    private List<InputChange> list() {
        List<InputChange> list = new ArrayList<>();
        changes.forEach((change, days) -> list.add(new InputChange(
                table.file(),
                row(change.key(), days),
                change.kind(),
                change.column(),
                change.before(),
                change.after())));
        return list;
    }

    private static String row(List<Cell> key, Set<DayOfWeek> days) {
        String words = words(key);
        return days.equals(KeyedRow.ALL_DAYS) ? words : words + ", days " + DaysSyntax.text(days);
    }
}
