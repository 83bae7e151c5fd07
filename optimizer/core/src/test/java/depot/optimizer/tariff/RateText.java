package depot.optimizer.tariff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A rate record drawn in text, with the field names of the open format (OpenEI utility rate database, names seen in published records and its
 * documentation). Every edit gives a new one.
 */
final class RateText {
    private final Map<String, String> fields;

    private RateText(Map<String, String> fields) {
        this.fields = fields;
    }

    /** One price, 0.2 a kWh at all times, and nothing else. */
    static RateText flat() {
        return new RateText(new LinkedHashMap<>())
                .with("label", "\"flat-1\"")
                .with("utility", "\"Valley Power\"")
                .with("name", "\"General service\"")
                .with("energyratestructure", "[[{\"rate\": 0.2, \"unit\": \"kWh\"}]]")
                .with("energyweekdayschedule", year("0*24"))
                .with("energyweekendschedule", year("0*24"));
    }

    /** Adds a field or replaces it; the value is JSON. */
    RateText with(String field, String json) {
        Map<String, String> edited = new LinkedHashMap<>(fields);
        edited.put(field, json);
        return new RateText(edited);
    }

    RateText without(String field) {
        Map<String, String> edited = new LinkedHashMap<>(fields);
        edited.remove(field);
        return new RateText(edited);
    }

    /** The record as JSON, one field to a line, the first of them on line 2. */
    String json() {
        return fields.entrySet().stream()
                .map(field -> "  \"" + field.getKey() + "\": " + field.getValue())
                .collect(Collectors.joining(",\n", "{\n", "\n}\n"));
    }

    Path write(Path file) {
        try {
            return Files.writeString(file, json());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Twelve months alike. A day is written as runs, such as "0*6 1*10 2*5 0*3". */
    static String year(String day) {
        return months(Collections.nCopies(12, day));
    }

    /** One kind of day in the months from June to September, another in the rest of the year. */
    static String summer(String summer, String winter) {
        return months(List.of(
                winter, winter, winter, winter, winter, summer, summer, summer, summer, winter, winter, winter));
    }

    static String months(List<String> days) {
        return days.stream().map(RateText::day).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String day(String runs) {
        return List.of(runs.split(" ")).stream()
                .flatMap(run -> Collections.nCopies(
                        Integer.parseInt(run.substring(run.indexOf('*') + 1)), run.substring(0, run.indexOf('*')))
                        .stream())
                .collect(Collectors.joining(",", "[", "]"));
    }
}
