package depot.optimizer.read;

import depot.optimizer.read.RawSettings.Shape;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A JSON value that knows its place in the file.
 *
 * @param kind what it is
 * @param text of a plain value, as it stands
 * @param shape of a plain value
 * @param members of an object, in the order of the file
 * @param items of a list
 * @param line from 1
 * @param character position within the line, from 1
 */
public record JsonTree(
        Kind kind,
        String text,
        Shape shape,
        Map<String, JsonTree> members,
        List<JsonTree> items,
        int line,
        int character) {
    /** Copies the collections. */
    public JsonTree {
        members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        items = List.copyOf(items);
    }

    /** What a JSON value is. */
    public enum Kind {
        /** Members in braces. */
        OBJECT,
        /** Items in brackets. */
        LIST,
        /** A text, a number, true, false or null. */
        PLAIN
    }
}
