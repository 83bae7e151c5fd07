package depot.optimizer.tariff;

import depot.optimizer.read.JsonDocument;
import depot.optimizer.read.JsonValue;
import depot.optimizer.read.JsonValue.Kind;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Finds the record in a file: the file is the record, or the database's answer with a list of {@code items}. */
final class RecordChoice {
    private static final String ITEMS = "items";
    private static final String LABEL = "label";
    private static final String OPTION = "--label";
    private static final int MOST_LISTED = 10;

    private RecordChoice() {}

    /** The record, or empty after telling why there is none. */
    static Optional<JsonValue> read(Path file, Optional<String> label, Remarks remarks) {
        long before = remarks.errors();
        Optional<JsonValue> value = JsonDocument.read(file, problem -> remarks.error(problem.file(), problem));
        if (value.isEmpty() || remarks.errors() > before) {
            return Optional.empty();
        }
        return choose(value.get(), label, remarks);
    }

    private static Optional<JsonValue> choose(JsonValue value, Optional<String> label, Remarks remarks) {
        JsonValue items = value.members().get(ITEMS);
        JsonValue list = items == null ? value : items;
        List<JsonValue> records = list.kind() == Kind.LIST ? list.items() : List.of(value);
        if (records.isEmpty()) {
            remarks.error(ITEMS, list.line(), "the file has no record", "the database found nothing; ask it otherwise");
            return Optional.empty();
        }
        for (JsonValue record : records) {
            if (record.kind() != Kind.OBJECT) {
                remarks.error(
                        record, "", "not a rate record", "a record is a JSON object with " + EnergyPrices.STRUCTURE);
                return Optional.empty();
            }
        }
        List<JsonValue> chosen = records.stream()
                .filter(record -> label.isEmpty() || label.get().equals(label(record)))
                .toList();
        if (chosen.size() == 1) {
            return Optional.of(chosen.get(0));
        }
        String labels = String.join(
                ", ",
                records.stream().limit(MOST_LISTED).map(RecordChoice::label).toList());
        String hint = (records.size() > MOST_LISTED ? "the first labels: " : "labels: ") + labels;
        String message = chosen.isEmpty()
                ? "the file has no record with this label"
                : "the file has " + chosen.size() + " records; say which";
        remarks.errorOfOption(OPTION, label.orElse(""), message, hint);
        return Optional.empty();
    }

    private static String label(JsonValue record) {
        JsonValue label = record.members().get(LABEL);
        return label == null ? "(none)" : label.text();
    }
}
