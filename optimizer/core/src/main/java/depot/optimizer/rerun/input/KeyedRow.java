package depot.optimizer.rerun.input;

import depot.optimizer.dictionary.BadValueException;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Table;
import depot.optimizer.dictionary.ValueType.Kind;
import depot.optimizer.read.RawRow;
import depot.optimizer.read.RawTable;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A row parted into what names it and what it says. Rows of tables without a key are named by all cells but the last, which holds their value.
 *
 * @param key cells that name it, without the days
 * @param days days that it is about; all of them where it names none
 * @param values its other cells, in the table's order
 */
record KeyedRow(List<Cell> key, Set<DayOfWeek> days, List<Cell> values) {

    /** Stands for rows that name no days. */
    static final Set<DayOfWeek> ALL_DAYS = Collections.unmodifiableSet(EnumSet.allOf(DayOfWeek.class));

    /**
     * A cell by its meaning.
     *
     * @param value equal for texts that mean the same
     * @param text as it stands in the file
     */
    record Cell(Field<?> field, Object value, String text) {

        boolean means(Cell other) {
            return value.equals(other.value);
        }

        String words() {
            return field.name() + " " + text;
        }
    }

    /** Every row of a table. */
    static List<KeyedRow> of(Table table, RawTable raw) {
        List<Field<?>> named = key(table);
        List<KeyedRow> rows = new ArrayList<>();
        for (RawRow row : raw.rows()) {
            List<Cell> key = new ArrayList<>();
            List<Cell> values = new ArrayList<>();
            Set<DayOfWeek> days = ALL_DAYS;
            for (Field<?> field : table.fields()) {
                Cell cell = cell(field, raw, row);
                if (field.type().kind() == Kind.DAYS && cell.value() instanceof Set<?> set) {
                    days = days(set);
                } else if (named.contains(field)) {
                    key.add(cell);
                } else {
                    values.add(cell);
                }
            }
            rows.add(new KeyedRow(List.copyOf(key), days, List.copyOf(values)));
        }
        return rows;
    }

    private static List<Field<?>> key(Table table) {
        List<Field<?>> fields = table.fields();
        return table.key().isEmpty() ? fields.subList(0, fields.size() - 1) : table.key();
    }

    private static Set<DayOfWeek> days(Set<?> set) {
        EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        set.forEach(day -> days.add((DayOfWeek) day));
        return days;
    }

    private static Cell cell(Field<?> field, RawTable raw, RawRow row) {
        int index = raw.header().indexOf(field.name());
        String text = index < 0 ? "" : row.cells().get(index);
        return new Cell(field, value(field, text.isEmpty() ? field.defaultText().orElse("") : text), text);
    }

    private static Object value(Field<?> field, String text) {
        if (text.isEmpty()) {
            return "";
        }
        try {
            Object value = field.type().parse(text);
            return value instanceof BigDecimal number ? number.stripTrailingZeros() : value;
        } catch (BadValueException bad) {
            return text;
        }
    }
}
