package depot.optimizer.report;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with a JSON file, for the person who has to put it right: place and cause, no class names. */
final class JsonTrouble {

    private static final Pattern MISSING = Pattern.compile("Missing (?:required )?creator property '(\\w+)'.*");
    private static final Pattern UNKNOWN = Pattern.compile("Unrecognized field (\"[^\"]*\").*");
    private static final Pattern CLASS_NAME = Pattern.compile("`?(?:[a-z]+\\.)+(?:[A-Z]\\w*[.$])*([A-Z]\\w*)`?");
    private static final Pattern SETTING = Pattern.compile(";? ?`?[\\w.]*Feature\\.\\w+`?( enabled)?");
    private static final int LONGEST = 200;

    private JsonTrouble() {}

    /** File, line, column, cause, and the place in the plan or a hint. */
    static String words(Path file, JsonProcessingException e) {
        return at(file, e.getLocation()) + ": " + cause(e) + "." + place(e);
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
        String unnamed = CLASS_NAME.matcher(first).replaceAll("$1");
        return shortened(SETTING.matcher(unnamed).replaceAll(""));
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
