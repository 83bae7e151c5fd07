package depot.optimizer.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A JSON object as it stands, flattened: a member of an inner object has a name with a dot.
 *
 * @param file the file it stands in
 * @param members in the order of the file
 */
public record RawSettings(String file, Map<String, Member> members) {
    /** Copies the members. */
    public RawSettings {
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
    }

    /** What a JSON value is. */
    public enum Shape {
        /** Text in quotes. */
        TEXT,
        /** A number. */
        NUMBER,
        /** true, false, null or an array: no setting is one of these. */
        OTHER
    }

    /**
     * A value of the object.
     *
     * @param line from 1
     * @param character position within the line, from 1
     */
    public record Member(String text, Shape shape, int line, int character) {}
}
