package depot.optimizer.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import depot.optimizer.read.RawSettings.Member;
import depot.optimizer.read.RawSettings.Shape;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads a JSON object of settings (RFC 8259): no comments, no NaN, each name once, objects one level deep. */
final class SettingsReader {
    private static final int MOST_NESTING = 32;
    private static final JsonFactory FACTORY = JsonSyntax.nestingAtMost(MOST_NESTING);

    private final String file;
    private final Consumer<ReadProblem> problems;
    private final Map<String, Member> members = new LinkedHashMap<>();

    private SettingsReader(String file, Consumer<ReadProblem> problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The settings, or empty after telling why the file is no JSON object. */
    static Optional<RawSettings> read(String file, String text, Consumer<ReadProblem> problems) {
        return new SettingsReader(file, problems).settings(text);
    }

    private Optional<RawSettings> settings(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                String message = text.isBlank() ? "the file is empty" : "the file is not a JSON object";
                problems.accept(ReadProblem.ofFile(file, message, "write { \"name\": ... }"));
                return Optional.empty();
            }
            readObject(parser, "");
            if (parser.nextToken() != null) {
                int line = parser.currentTokenLocation().getLineNr();
                problems.accept(ReadProblem.ofLine(file, line, "something follows the object", "delete it"));
            }
            return Optional.of(new RawSettings(file, members));
        } catch (IOException broken) {
            problems.accept(problem(broken));
            return Optional.empty();
        }
    }

    private void readObject(JsonParser parser, String prefix) throws IOException {
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            // A dot within a name is not a member of an object: quotes keep the two apart.
            String own = parser.currentName();
            String name = prefix + (own.indexOf('.') < 0 ? own : "'" + own + "'");
            JsonToken token = parser.nextToken();
            JsonLocation place = parser.currentTokenLocation();
            if (token == JsonToken.START_OBJECT && prefix.isEmpty()) {
                readObject(parser, name + ".");
            } else if (token.isStructStart()) {
                problems.accept(ReadProblem.ofValue(
                        file,
                        place.getLineNr(),
                        name,
                        parser.getText(),
                        "objects and lists do not nest here",
                        "write one value"));
                parser.skipChildren();
            } else {
                add(name, new Member(parser.getText(), shape(token), place.getLineNr(), place.getColumnNr()));
            }
        }
    }

    private void add(String name, Member member) {
        Member earlier = members.putIfAbsent(name, member);
        if (earlier != null) {
            problems.accept(ReadProblem.ofValue(
                    file,
                    member.line(),
                    name,
                    member.text(),
                    "the setting is there twice",
                    "it is also on line " + earlier.line() + "; delete one of them"));
        }
    }

    private static Shape shape(JsonToken token) {
        if (token == JsonToken.VALUE_STRING) {
            return Shape.TEXT;
        }
        return token.isNumeric() ? Shape.NUMBER : Shape.OTHER;
    }

    private ReadProblem problem(IOException broken) {
        if (broken instanceof JsonProcessingException detail && detail.getLocation() == null) {
            String fault = "not JSON of settings: " + JsonSyntax.fault(detail);
            return ReadProblem.ofFile(file, fault, "write one value per setting");
        }
        return JsonSyntax.problem(
                file,
                broken,
                "text in double quotes, numbers plain, commas between settings, no comments, no NaN",
                "check it in a JSON editor");
    }
}
