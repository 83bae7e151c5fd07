package depot.optimizer.check;

import depot.optimizer.dictionary.Dictionary;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Table;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Rules that hold for every table of the dictionary: rows and references. */
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
}
