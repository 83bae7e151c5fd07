package depot.optimizer.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A value of a JSON file that still knows where it stands.
 *
 * @param text of a text, number or truth value as the file has it; a short stand-in for the other kinds
 * @param line that it begins on, from 1
 * @param members of an object, in the order of the file; empty for the other kinds
 * @param items of a list; empty for the other kinds
 */
public record JsonValue(Kind kind, String text, int line, Map<String, JsonValue> members, List<JsonValue> items) {
    /** Copies the collections. */
    public JsonValue {
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        items = List.copyOf(items);
    }

    /** What a JSON value is. */
    public enum Kind {
        /** Members with names. */
        OBJECT("an object"),
        /** Values in order. */
        LIST("a list"),
        /** Text in quotes. */
        TEXT("text"),
        /** A number. */
        NUMBER("a number"),
        /** true or false. */
        TRUTH("true or false"),
        /** null. */
        NOTHING("null");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In plain words, with an article where there is one. */
        public String words() {
            return words;
        }
    }

    static JsonValue scalar(Kind kind, String text, int line) {
        return new JsonValue(kind, text, line, Map.of(), List.of());
    }

    static JsonValue object(int line, Map<String, JsonValue> members) {
        return new JsonValue(Kind.OBJECT, "{...}", line, members, List.of());
    }

    static JsonValue list(int line, List<JsonValue> items) {
        return new JsonValue(Kind.LIST, "[...]", line, Map.of(), items);
    }
}
