package depot.optimizer.check;

import depot.optimizer.dictionary.BadValueException;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Table;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** A row whose texts were read into values; a cell with a bad text has no value, and the row is then not sound. */
final class TypedRow {
    private final Table table;
    private final String[] texts;
    private final Object[] values;
    private final IntFunction<Place> places;
    private boolean sound = true;

    /**
     * Where a cell is.
     *
     * @param line from 1
     * @param position of the column in its table, or of the character in its line; for sorting
     */
    record Place(int line, int position) {}

    private TypedRow(Table table, IntFunction<Place> places) {
        this.table = table;
        this.texts = new String[table.fields().size()];
        this.values = new Object[texts.length];
        this.places = places;
    }

    /**
     * Reads a row.
     *
     * @param texts by position of the field in the table, empty: blank or missing
     * @param places by position of the field in the table
     */
    static TypedRow read(Table table, IntFunction<String> texts, IntFunction<Place> places, Findings findings) {
        TypedRow row = new TypedRow(table, places);
        List<Field<?>> fields = table.fields();
        for (int index = 0; index < row.texts.length; index++) {
            row.texts[index] = texts.apply(index);
            row.readCell(index, fields.get(index), findings);
        }
        return row;
    }

    private void readCell(int index, Field<?> field, Findings findings) {
        String text = texts[index];
        if (text.isEmpty() && field.presence() == Presence.REQUIRED) {
            sound = false;
            findings.error(this, field, "the value is missing", "what it is: " + field.meaning());
            return;
        }
        String effective = text.isEmpty() ? field.defaultText().orElse("") : text;
        if (effective.isEmpty()) {
            return;
        }
        try {
            values[index] = field.type().parse(effective);
        } catch (BadValueException bad) {
            sound = false;
            findings.error(this, field, bad.getMessage(), bad.hint());
        }
    }

    /** Marks the row as one that no record can be made of. */
    void spoil() {
        sound = false;
    }

    /** Whether every cell has a good value. */
    boolean sound() {
        return sound;
    }

    Table table() {
        return table;
    }

    /** The text of a cell as it stands in the file. */
    String text(Field<?> field) {
        return texts[table.indexOf(field)];
    }

    Place place(Field<?> field) {
        return places.apply(table.indexOf(field));
    }

    /** The line of the row's first field. */
    int line() {
        return places.apply(0).line();
    }

    /** The value of a cell, empty: blank without a default, or bad. */
    @SuppressWarnings("unchecked")
    <T> Optional<T> find(Field<T> field) {
        // The value was made by this very field's parser.
        return Optional.ofNullable((T) values[table.indexOf(field)]);
    }

    /** The value of a cell of a sound row that is required or has a default. */
    <T> T get(Field<T> field) {
        return find(field)
                .orElseThrow(() -> new IllegalStateException(
                        table.file() + " line " + line() + " has no value in column " + field.name() + "."));
    }
}
