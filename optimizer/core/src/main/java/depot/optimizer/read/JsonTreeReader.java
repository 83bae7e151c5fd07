package depot.optimizer.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import depot.optimizer.read.JsonTree.Kind;
import depot.optimizer.read.RawSettings.Shape;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads a JSON object (RFC 8259) with the place of every value: no comments, no NaN, each name once. */
final class JsonTreeReader {
    private static final int MOST_NESTING = 32;
    private static final JsonFactory FACTORY = JsonSyntax.nestingAtMost(MOST_NESTING);

    private final String file;
    private final Consumer<ReadProblem> problems;

    private JsonTreeReader(String file, Consumer<ReadProblem> problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The object, or empty after telling why the file is none. */
    static Optional<JsonTree> read(String file, String text, Consumer<ReadProblem> problems) {
        return new JsonTreeReader(file, problems).tree(text);
    }

    private Optional<JsonTree> tree(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                String message = text.isBlank() ? "the file is empty" : "the file is not a JSON object";
                problems.accept(ReadProblem.ofFile(file, message, "write { \"name\": ... }"));
                return Optional.empty();
            }
            JsonTree tree = value(parser, "");
            if (parser.nextToken() != null) {
                int line = parser.currentTokenLocation().getLineNr();
                problems.accept(ReadProblem.ofLine(file, line, "something follows the object", "delete it"));
            }
            return Optional.of(tree);
        } catch (IOException broken) {
            problems.accept(JsonSyntax.problem(
                    file,
                    broken,
                    "text in double quotes, numbers plain, commas between members, no comments, no NaN",
                    "check it in a JSON editor"));
            return Optional.empty();
        }
    }

    /** The value that the parser has just begun. */
    private JsonTree value(JsonParser parser, String path) throws IOException {
        JsonToken token = parser.currentToken();
        JsonLocation place = parser.currentTokenLocation();
        Map<String, JsonTree> members = new LinkedHashMap<>();
        List<JsonTree> items = new ArrayList<>();
        if (token == JsonToken.START_OBJECT) {
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                member(parser, path, members);
            }
            return tree(Kind.OBJECT, "", Shape.OTHER, members, items, place);
        }
        if (token == JsonToken.START_ARRAY) {
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(parser, path + "[" + items.size() + "]"));
            }
            return tree(Kind.LIST, "", Shape.OTHER, members, items, place);
        }
        Shape shape = token == JsonToken.VALUE_STRING ? Shape.TEXT : token.isNumeric() ? Shape.NUMBER : Shape.OTHER;
        return tree(Kind.PLAIN, parser.getText(), shape, members, items, place);
    }

    private void member(JsonParser parser, String path, Map<String, JsonTree> members) throws IOException {
        String name = parser.currentName();
        String whole = path.isEmpty() ? name : path + "." + name;
        parser.nextToken();
        JsonTree value = value(parser, whole);
        JsonTree earlier = members.putIfAbsent(name, value);
        if (earlier != null) {
            problems.accept(ReadProblem.ofValue(
                    file,
                    value.line(),
                    whole,
                    value.text(),
                    "the member is there twice",
                    "it is also on line " + earlier.line() + "; delete one of them"));
        }
    }

    private static JsonTree tree(
            Kind kind,
            String text,
            Shape shape,
            Map<String, JsonTree> members,
            List<JsonTree> items,
            JsonLocation place) {
        return new JsonTree(kind, text, shape, members, items, place.getLineNr(), place.getColumnNr());
    }
}
