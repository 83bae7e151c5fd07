package depot.optimizer.dictionary;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Iterator;
import java.util.Map;

/** Writes maps, lists, texts, numbers and truth values as JSON, indented by two blanks, in their own order. */
final class JsonText {
    private static final String INDENT = "  ";

    private final StringBuilder out = new StringBuilder();

    private JsonText() {}

    static String of(Object value) {
        JsonText text = new JsonText();
        text.write(value, "");
        return text.out.append('\n').toString();
    }

    private void write(Object value, String indent) {
        if (value instanceof Map<?, ?> map) {
            writeMap(map, indent);
        } else if (value instanceof Collection<?> list) {
            writeList(list, indent);
        } else if (value instanceof BigDecimal number) {
            out.append(number.toPlainString());
        } else if (value instanceof Boolean || value instanceof Integer) {
            out.append(value);
        } else {
            writeString(String.valueOf(value));
        }
    }

    private void writeMap(Map<?, ?> map, String indent) {
        out.append("{\n");
        Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
        while (entries.hasNext()) {
            Map.Entry<?, ?> entry = entries.next();
            out.append(indent).append(INDENT);
            writeString(String.valueOf(entry.getKey()));
            out.append(": ");
            write(entry.getValue(), indent + INDENT);
            out.append(entries.hasNext() ? ",\n" : "\n");
        }
        out.append(indent).append('}');
    }

    private void writeList(Collection<?> list, String indent) {
        boolean plain = list.stream().noneMatch(value -> value instanceof Map || value instanceof Collection);
        String gap = plain ? "" : "\n" + indent + INDENT;
        out.append('[').append(gap);
        Iterator<?> values = list.iterator();
        while (values.hasNext()) {
            write(values.next(), indent + INDENT);
            out.append(values.hasNext() ? "," + (plain ? " " : gap) : "");
        }
        out.append(plain ? "" : "\n" + indent).append(']');
    }

    private void writeString(String text) {
        out.append('"');
        for (int index = 0; index < text.length(); index++) {
            char letter = text.charAt(index);
            if (letter == '"' || letter == '\\') {
                out.append('\\');
            }
            out.append(letter);
        }
        out.append('"');
    }
}
