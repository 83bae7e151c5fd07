package depot.optimizer.dictionary;

import java.util.Optional;

/**
 * A column of a table or a setting of {@code scenario.json}. Fields are declared once, as constants, and compared by
 * identity.
 *
 * @param <T> what its text is read into
 */
public final class Field<T> {
    private final String name;
    private final ValueType<T> type;
    private final String unit;
    private final Presence presence;
    private final Optional<String> defaultText;
    private final String meaning;

    private Field(
            String name,
            ValueType<T> type,
            String unit,
            Presence presence,
            Optional<String> defaultText,
            String meaning) {
        this.name = name;
        this.type = type;
        this.unit = unit;
        this.presence = presence;
        this.defaultText = defaultText;
        this.meaning = meaning;
    }

    /** A field that every row has. */
    static <T> Field<T> required(String name, ValueType<T> type, String unit, String meaning) {
        return new Field<>(name, type, unit, Presence.REQUIRED, Optional.empty(), meaning);
    }

    /** A field that may be left blank, or whose column may be missing; it then has no value. */
    static <T> Field<T> optional(String name, ValueType<T> type, String unit, String meaning) {
        return new Field<>(name, type, unit, Presence.OPTIONAL, Optional.empty(), meaning);
    }

    /** A field that may be left blank, or whose column may be missing; it then has the default. */
    static <T> Field<T> defaulted(String name, ValueType<T> type, String unit, String defaultText, String meaning) {
        return new Field<>(name, type, unit, Presence.OPTIONAL, Optional.of(defaultText), meaning);
    }

    /** Name in the header of the table; a path with dots in {@code scenario.json}. */
    public String name() {
        return name;
    }

    /** How its text is read. */
    public ValueType<T> type() {
        return type;
    }

    /** Unit of the value, empty: it has none. */
    public String unit() {
        return unit;
    }

    /** Whether each row needs it. */
    public Presence presence() {
        return presence;
    }

    /** What a blank stands for, empty: nothing. */
    public Optional<String> defaultText() {
        return defaultText;
    }

    /** What the value means, for people who fill in the table. */
    public String meaning() {
        return meaning;
    }

    @Override
    public String toString() {
        return name;
    }
}
