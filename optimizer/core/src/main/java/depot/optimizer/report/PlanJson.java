package depot.optimizer.report;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.json.JsonMapper;
import depot.optimizer.plan.Plan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Currency;

/**
 * The plan as a JSON file. The same plan always gives the same bytes: fields in the order of the records, input files by name, line
 * ends as LF, no times of writing.
 */
public final class PlanJson {

    /** Name of the file in a run's folder. */
    public static final String FILE_NAME = "plan.json";

    private static final JsonMapper MAPPER = PlanMapper.create();

    private PlanJson() {}

    /**
     * The text of plan.json.
     *
     * @throws IllegalArgumentException if the plan has a number that is not finite
     */
    public static String write(Plan plan) {
        try {
            return MAPPER.writer(PlanMapper.printer()).writeValueAsString(plan) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("The plan cannot be written as JSON: " + e.getOriginalMessage(), e);
        }
    }

    /**
     * Reads a plan that {@link #write} made.
     *
     * @throws UnreadablePlanException if the file is missing, malformed, incomplete or of another format version; the message names
     *     line and column
     */
    public static Plan read(Path file) throws UnreadablePlanException {
        byte[] bytes = bytes(file);
        String text = new String(bytes, StandardCharsets.UTF_8);
        try {
            requireFormatVersion(file, text);
            Plan plan = MAPPER.readValue(text, Plan.class);
            if (plan == null) {
                throw new UnreadablePlanException(file + " holds no plan, only the word null.", null);
            }
            requireUsable(file, plan);
            return plan;
        } catch (JsonProcessingException e) {
            throw new UnreadablePlanException(JsonTrouble.words(file, text, e), e);
        } catch (UnreadablePlanException e) {
            throw e;
        } catch (IOException e) {
            throw new UnreadablePlanException("Cannot read " + file + ": " + e.getMessage(), e);
        }
    }

    private static byte[] bytes(Path file) throws UnreadablePlanException {
        try {
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new UnreadablePlanException("There is no file " + file + ".", e);
        } catch (IOException e) {
            String cause = Files.isDirectory(file) ? "it is a folder" : e.getMessage();
            throw new UnreadablePlanException("Cannot read " + file + ": " + cause, e);
        }
    }

    /** Looks for the version first: a plan of another version differs in fields, and that would be the lesser message. */
    private static void requireFormatVersion(Path file, String text) throws IOException {
        try (JsonParser parser = MAPPER.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new UnreadablePlanException(
                        JsonTrouble.at(file, parser.currentTokenLocation())
                                + ": a plan starts with {, and this does not.",
                        null);
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String field = parser.currentName();
                JsonToken value = parser.nextToken();
                if (field.equals("formatVersion")) {
                    requireSupported(file, parser, value);
                    return;
                }
                parser.skipChildren();
            }
            throw new UnreadablePlanException(
                    JsonTrouble.at(file, parser.currentTokenLocation())
                            + ": formatVersion is missing. Maybe this is not a plan.",
                    null);
        }
    }

    /** What every reader of a plan relies on; whether it fits a scenario is for the replay to say. */
    private static void requireUsable(Path file, Plan plan) throws UnreadablePlanException {
        boolean known = Currency.getAvailableCurrencies().stream()
                .anyMatch(currency -> currency.getCurrencyCode().equals(plan.currency()));
        if (!known) {
            throw new UnreadablePlanException(
                    "%s: currency \"%s\" is no ISO 4217 code, such as EUR."
                            .formatted(file, JsonTrouble.shortened(plan.currency())),
                    null);
        }
        if (plan.settings().handoverMinutes() <= 0) {
            throw new UnreadablePlanException(
                    "%s: settings.handoverMinutes is %d and must be above 0."
                            .formatted(file, plan.settings().handoverMinutes()),
                    null);
        }
    }

    private static void requireSupported(Path file, JsonParser parser, JsonToken value) throws IOException {
        if (value != JsonToken.VALUE_NUMBER_INT || !parser.getText().equals(Integer.toString(Plan.FORMAT_VERSION))) {
            throw new UnreadablePlanException(
                    "%s: formatVersion is %s, and this version reads %d only. Make the plan again from its tables."
                            .formatted(
                                    JsonTrouble.at(file, parser.currentTokenLocation()),
                                    JsonTrouble.shortened(parser.getText()),
                                    Plan.FORMAT_VERSION),
                    null);
        }
    }
}
