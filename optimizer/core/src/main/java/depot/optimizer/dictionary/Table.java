package depot.optimizer.dictionary;

import java.util.List;
import java.util.Optional;

/**
 * A table of a scenario: one CSV file.
 *
 * @param file name of the file within the scenario's folder
 * @param presence whether a scenario needs it
 * @param rowPer what one row stands for
 * @param key fields that together name a row; a field of days in it names one row for each of its days; empty: rows
 *     have no name
 * @param fields all fields, in the order that documentation lists them
 */
public record Table(String file, Presence presence, String rowPer, List<Field<?>> key, List<Field<?>> fields) {

    /** Copies the lists. */
    public Table {
        key = List.copyOf(key);
        fields = List.copyOf(fields);
    }

    /** Name without its ending. */
    public String name() {
        return file.substring(0, file.lastIndexOf('.'));
    }

    /** The field with a name. */
    public Optional<Field<?>> field(String name) {
        return fields.stream().filter(field -> field.name().equals(name)).findFirst();
    }

    /** Position of one of the table's own fields. */
    public int indexOf(Field<?> field) {
        // A table has a score of fields at most: looking through them beats a map.
        for (int index = 0; index < fields.size(); index++) {
            if (fields.get(index) == field) {
                return index;
            }
        }
        throw new IllegalArgumentException("Column " + field.name() + " is not one of " + file + ".");
    }
}
