package depot.optimizer.dictionary;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;

/** The documents made from the dictionary: pages, JSON Schemas and a table schema. */
public final class DictionaryDocuments {
    private DictionaryDocuments() {}

    /** Texts of the documents by file name. */
    public static SortedMap<String, String> documents() {
        SortedMap<String, String> documents = new TreeMap<>();
        documents.put("README.md", InputsPage.text());
        documents.put("SWEEPS.md", SweepsPage.text());
        documents.put("scenario.schema.json", SettingsSchema.text());
        documents.put("sweep.schema.json", SweepSchema.text());
        documents.put("tables.json", TablesSchema.text());
        return documents;
    }

    /**
     * Writes the documents.
     *
     * @param arguments the folder to write to, {@code inputs} of the project
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length != 1) {
            throw new IllegalArgumentException(
                    "Give one folder, the project's inputs; there are " + arguments.length + " arguments.");
        }
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (var document : documents().entrySet()) {
            Files.write(folder.resolve(document.getKey()), document.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }
}
