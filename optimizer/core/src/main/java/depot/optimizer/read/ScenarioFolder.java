package depot.optimizer.read;

import depot.optimizer.dictionary.Dictionary;
import depot.optimizer.dictionary.Presence;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.Table;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Reads the files of a scenario's folder. */
public final class ScenarioFolder {
    /** Larger files are a mistake; without a limit they would end in a lack of memory. */
    private static final long MAX_BYTES = 256L << 20;

    private final Path folder;
    private final Consumer<ReadProblem> problems;
    private final SortedMap<String, String> hashes = new TreeMap<>();

    private ScenarioFolder(Path folder, Consumer<ReadProblem> problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /**
     * What a folder holds.
     *
     * @param settings empty: missing or unreadable
     * @param tables the tables that could be read, in the dictionary's order
     * @param unknown names of CSV files that no table of the dictionary has, sorted
     * @param hashes SHA-256 of each known file, by name
     */
    public record Content(
            Optional<RawSettings> settings,
            Map<String, RawTable> tables,
            List<String> unknown,
            SortedMap<String, String> hashes) {}

    /** Reads a folder; everything wrong with its files goes to {@code problems}, never an exception. */
    public static Content read(Path folder, Consumer<ReadProblem> problems) {
        return new ScenarioFolder(folder, problems).content();
    }

    private Content content() {
        if (!Files.isDirectory(folder)) {
            String what = Files.exists(folder) ? "is not a folder" : "does not exist";
            problems.accept(ReadProblem.ofFile(
                    folder.toString(), "the scenario's folder " + what, "give the folder that holds scenario.json"));
            return new Content(Optional.empty(), Map.of(), List.of(), hashes);
        }
        String file = Settings.TABLE.file();
        Optional<RawSettings> settings =
                text(file, Presence.REQUIRED).flatMap(text -> SettingsReader.read(file, text, problems));
        Map<String, RawTable> tables = new LinkedHashMap<>();
        for (Table table : Dictionary.TABLES) {
            text(table.file(), table.presence())
                    .flatMap(text -> CsvReader.read(table.file(), text, problems))
                    .ifPresent(raw -> tables.put(table.file(), raw));
        }
        return new Content(settings, tables, unknown(), hashes);
    }

    private Optional<String> text(String file, Presence presence) {
        Path path = folder.resolve(file);
        try {
            if (Files.size(path) > MAX_BYTES) {
                problems.accept(ReadProblem.ofFile(file, "the file is larger than 256 MiB", "is it the right file?"));
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(path);
            hashes.put(file, sha256(bytes));
            return InputText.decode(file, bytes, problems);
        } catch (NoSuchFileException missing) {
            if (presence == Presence.REQUIRED) {
                problems.accept(ReadProblem.ofFile(file, "the file is missing", "inputs/README.md says what it holds"));
            }
        } catch (IOException unreadable) {
            problems.accept(ReadProblem.ofFile(file, "the file cannot be read", "is it a file, and may you read it?"));
        }
        return Optional.empty();
    }

    private List<String> unknown() {
        List<String> names = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.map(path -> path.getFileName().toString())
                    .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(".csv"))
                    .filter(name -> Dictionary.table(name).isEmpty())
                    .sorted()
                    .forEach(names::add);
        } catch (IOException unreadable) {
            problems.accept(ReadProblem.ofFile(folder.toString(), "the folder cannot be listed", "may you read it?"));
        }
        return names;
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform has SHA-256.", impossible);
        }
    }
}
