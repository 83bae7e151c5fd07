package depot.optimizer.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;

/** What all readers of JSON share: parsers that do not follow nesting without end, and what is told of broken text. */
final class JsonSyntax {

    private JsonSyntax() {}

    /** Makes parsers that give up beyond a depth of objects and lists. */
    static JsonFactory nestingAtMost(int depth) {
        return JsonFactory.builder()
                .streamReadConstraints(
                        StreamReadConstraints.builder().maxNestingDepth(depth).build())
                .build();
    }

    /** The fault in the parser's first sentence; the rest lists the parser's own options. */
    static String fault(JsonProcessingException broken) {
        return broken.getOriginalMessage().replaceAll("\\s+", " ").split("; |: maybe | \\(`", 2)[0];
    }

    /**
     * What is wrong with a text that cannot be parsed.
     *
     * @param hint where the place is known
     * @param hintWithoutPlace where it is not
     */
    static ReadProblem problem(String file, IOException broken, String hint, String hintWithoutPlace) {
        if (!(broken instanceof JsonProcessingException detail) || detail.getLocation() == null) {
            return ReadProblem.ofFile(file, "the file cannot be read as JSON", hintWithoutPlace);
        }
        JsonLocation place = detail.getLocation();
        String fault = "not JSON: " + fault(detail) + " (character " + place.getColumnNr() + ")";
        return ReadProblem.ofLine(file, place.getLineNr(), fault, hint);
    }
}
