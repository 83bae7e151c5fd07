package depot.optimizer.check;

import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.Dictionary;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Table;
import depot.optimizer.dictionary.ValueType.Kind;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Rules that hold for every table of the dictionary: rows, keys, references. */
final class TableRules {
    private TableRules() {}

    /** A required table has rows. */
    static void rows(Drafts drafts, Findings findings) {
        for (Table table : Dictionary.TABLES) {
            TypedTable typed = drafts.table(table);
            if (table.presence() == Presence.REQUIRED
                    && typed.whole()
                    && typed.rows().isEmpty()) {
                findings.errorOfFile(table.file(), "the table has no rows", "it has one row per " + table.rowPer());
            }
        }
    }

    /** Each reference names a row that is there. */
    static void references(Drafts drafts, Findings findings) {
        for (Table table : Dictionary.TABLES) {
            for (Field<?> field : table.fields()) {
                field.type().target().ifPresent(target -> references(drafts, table, field, target, findings));
            }
        }
    }

    private static void references(
            Drafts drafts, Table table, Field<?> field, Field<String> target, Findings findings) {
        Table targetTable = Dictionary.tableOf(target);
        if (!drafts.table(targetTable).complete()) {
            return;
        }
        Set<Object> keys = new HashSet<>();
        drafts.table(targetTable).rows().forEach(row -> row.find(target).ifPresent(keys::add));
        for (TypedRow row : drafts.table(table).rows()) {
            Optional<?> value = row.find(field);
            if (value.isPresent() && !keys.contains(value.get())) {
                findings.error(
                        row,
                        field,
                        "no such " + target.name() + " in " + targetTable.file(),
                        NearestKey.hint(row.text(field), keys));
            }
        }
    }

    /** Keys are unique, on each day when days belong to the key. */
    static void keys(Drafts drafts, Findings findings) {
        for (Table table : Dictionary.TABLES) {
            if (!table.key().isEmpty()) {
                keys(drafts.table(table), findings);
            }
        }
    }

    private static void keys(TypedTable typed, Findings findings) {
        List<Field<?>> plain = new ArrayList<>(typed.table().key());
        plain.removeIf(field -> field.type().kind() == Kind.DAYS);
        Map<List<Object>, List<TypedRow>> earlier = new HashMap<>();
        for (TypedRow row : typed.rows()) {
            List<Object> key = new ArrayList<>();
            plain.forEach(
                    field -> key.add(row.find(field).map(Object.class::cast).orElse("")));
            if (key.get(0).equals("")) {
                continue;
            }
            List<TypedRow> before = earlier.computeIfAbsent(key, none -> new ArrayList<>());
            before.stream()
                    .filter(other -> !Collections.disjoint(days(row), days(other)))
                    .findFirst()
                    .ifPresent(other -> duplicate(row, other, plain, findings));
            before.add(row);
        }
    }

    private static void duplicate(TypedRow row, TypedRow other, List<Field<?>> plain, Findings findings) {
        List<String> names = plain.stream().map(Field::name).toList();
        Field<?> field = plain.get(plain.size() - 1);
        Set<DayOfWeek> common = EnumSet.copyOf(days(row));
        common.retainAll(days(other));
        String days = daysField(row).isPresent() ? " on " + DaysSyntax.text(common) : "";
        findings.error(
                row,
                field,
                "a row with the same " + String.join(", ", names) + " is on line " + other.line() + days,
                "delete one of the two rows, or give one of them another key");
    }

    private static Set<DayOfWeek> days(TypedRow row) {
        return daysField(row).flatMap(row::find).orElse(EnumSet.allOf(DayOfWeek.class));
    }

    @SuppressWarnings("unchecked")
    private static Optional<Field<Set<DayOfWeek>>> daysField(TypedRow row) {
        // Only the type of days has this kind.
        return row.table().key().stream()
                .filter(field -> field.type().kind() == Kind.DAYS)
                .map(field -> (Field<Set<DayOfWeek>>) field)
                .findFirst();
    }
}
