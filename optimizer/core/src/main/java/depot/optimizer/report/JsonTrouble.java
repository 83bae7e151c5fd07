package depot.optimizer.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with a JSON file, for the person who has to put it right: place and cause, no class names. */
final class JsonTrouble {

    private static final Pattern MISSING = Pattern.compile("Missing (?:required )?creator property '(\\w+)'.*");
    private static final Pattern UNKNOWN = Pattern.compile("Unrecognized field (\"[^\"]*\").*");
    /** Words that Jackson adds for programmers: settings of its own, tokens, what could be switched off. */
    private static final Pattern FOR_PROGRAMMERS =
            Pattern.compile(" \\((?:but |token |although |class )[^)]*\\)|: disable .*|;? `\\w*Feature[^`]*` enabled");

    private static final Pattern CLASS_NAME = Pattern.compile("(?:[a-z]+\\.)+(?:[A-Z]\\w*[.$])*(?=[A-Z])");

    private static final int LONGEST = 200;

    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonTrouble() {}

    /** File, line, column, cause, and the place in the plan or a hint. */
    static String words(Path file, String text, JsonProcessingException e) {
        return at(file, location(text, e)) + ": " + cause(e) + "." + place(e);
    }

    static String at(Path file, JsonLocation location) {
        return location == null
                ? file.toString()
                : "%s, line %d, column %d".formatted(file, location.getLineNr(), location.getColumnNr());
    }

    static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
    }

    private static String cause(JsonProcessingException e) {
        String first = e.getOriginalMessage().lines().findFirst().orElse("malformed");
        Matcher missing = MISSING.matcher(first);
        if (missing.matches()) {
            return "the field \"" + missing.group(1) + "\" is missing in what ends here";
        }
        Matcher unknown = UNKNOWN.matcher(first);
        if (unknown.matches()) {
            return "no field " + shortened(unknown.group(1)) + " is known here";
        }
        String plain = FOR_PROGRAMMERS.matcher(first).replaceAll("");
        return shortened(CLASS_NAME.matcher(plain).replaceAll("").replace("`", ""));
    }

    /** Jackson names the end of an object for fields that it does not know; the field itself is of more use. */
    private static JsonLocation location(String text, JsonProcessingException e) {
        if (!(e instanceof JsonMappingException mapping) || mapping.getPath().isEmpty()) {
            return e.getLocation();
        }
        StringBuilder path = new StringBuilder();
        mapping.getPath().forEach(step -> path.append('/')
                .append(
                        step.getFieldName() == null
                                ? Integer.toString(step.getIndex())
                                : escaped(step.getFieldName())));
        JsonPointer target = JsonPointer.compile(path.toString());
        try (JsonParser parser = FACTORY.createParser(text)) {
            while (parser.nextToken() != null) {
                if (parser.getParsingContext().pathAsPointer().equals(target)) {
                    return parser.currentTokenLocation();
                }
            }
        } catch (IOException malformed) {
            return e.getLocation();
        }
        return e.getLocation();
    }

    private static String escaped(String field) {
        return field.replace("~", "~0").replace("/", "~1");
    }

    private static String place(JsonProcessingException e) {
        if (!(e instanceof JsonMappingException mapping) || mapping.getPath().isEmpty()) {
            return " Maybe the file was cut short or edited by hand.";
        }
        StringBuilder place = new StringBuilder();
        for (JsonMappingException.Reference step : mapping.getPath()) {
            if (step.getFieldName() == null) {
                place.append('[').append(step.getIndex()).append(']');
            } else {
                place.append(place.isEmpty() ? "" : ".").append(step.getFieldName());
            }
        }
        return " (At " + place + ")";
    }
}
