package depot.optimizer.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import depot.optimizer.read.JsonValue.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads a JSON file of any shape (RFC 8259) that was made elsewhere: no comments, no NaN, each name of an object once. */
public final class JsonDocument {
    private static final long MAX_BYTES = 64L << 20;
    private static final int MOST_NESTING = 64;
    private static final JsonFactory FACTORY = JsonSyntax.nestingAtMost(MOST_NESTING);

    private final String file;
    private final Consumer<ReadProblem> problems;

    private JsonDocument(String file, Consumer<ReadProblem> problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The value that a file holds, or empty after telling what is wrong with it; never an exception. */
    public static Optional<JsonValue> read(Path path, Consumer<ReadProblem> problems) {
        String file = path.toString();
        try {
            if (Files.size(path) > MAX_BYTES) {
                problems.accept(ReadProblem.ofFile(file, "the file is larger than 64 MiB", "is it the right file?"));
                return Optional.empty();
            }
            return InputText.decode(file, Files.readAllBytes(path), problems)
                    .flatMap(text -> new JsonDocument(file, problems).document(text));
        } catch (NoSuchFileException missing) {
            problems.accept(ReadProblem.ofFile(file, "there is no such file", "paths begin in the folder you are in"));
        } catch (IOException unreadable) {
            problems.accept(ReadProblem.ofFile(file, "the file cannot be read", "is it a file, and may you read it?"));
        }
        return Optional.empty();
    }

    private Optional<JsonValue> document(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            if (parser.nextToken() == null) {
                problems.accept(ReadProblem.ofFile(file, "the file is empty", "is it the right file?"));
                return Optional.empty();
            }
            JsonValue value = value(parser);
            if (parser.nextToken() != null) {
                int line = parser.currentTokenLocation().getLineNr();
                problems.accept(ReadProblem.ofLine(file, line, "something follows the end of the JSON", "delete it"));
                return Optional.empty();
            }
            return Optional.of(value);
        } catch (IOException broken) {
            String hint = "download it again; web pages and cut-off files are no JSON";
            problems.accept(JsonSyntax.problem(file, broken, hint, hint));
            return Optional.empty();
        }
    }

    private JsonValue value(JsonParser parser) throws IOException {
        int line = parser.currentTokenLocation().getLineNr();
        return switch (parser.currentToken()) {
            case START_OBJECT -> JsonValue.object(line, members(parser));
            case START_ARRAY -> JsonValue.list(line, items(parser));
            case VALUE_STRING -> JsonValue.scalar(Kind.TEXT, parser.getText(), line);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> JsonValue.scalar(Kind.NUMBER, parser.getText(), line);
            case VALUE_TRUE, VALUE_FALSE -> JsonValue.scalar(Kind.TRUTH, parser.getText(), line);
            default -> JsonValue.scalar(Kind.NOTHING, parser.getText(), line);
        };
    }

    private Map<String, JsonValue> members(JsonParser parser) throws IOException {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            JsonValue value = value(parser);
            JsonValue earlier = members.putIfAbsent(name, value);
            if (earlier != null) {
                problems.accept(ReadProblem.ofValue(
                        file,
                        value.line(),
                        name,
                        value.text(),
                        "the object has two members of this name",
                        "the other one is on line " + earlier.line() + "; delete one of them"));
            }
        }
        return members;
    }

    private List<JsonValue> items(JsonParser parser) throws IOException {
        List<JsonValue> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser));
        }
        return items;
    }
}
