package depot.optimizer.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A JSON file.
 *
 * @param file name that messages give it
 * @param root empty: missing or unreadable, and told
 * @param hash SHA-256 of its bytes, empty: there are none
 */
public record JsonFile(String file, Optional<JsonTree> root, String hash) {

    /** Larger files are a mistake; without a limit they would end in a lack of memory. */
    private static final long MAX_BYTES = 16L << 20;

    /** Reads a file; everything wrong with it goes to {@code problems}, never an exception. */
    public static JsonFile read(Path path, Consumer<ReadProblem> problems) {
        String file = path.toString();
        try {
            if (Files.isRegularFile(path) && Files.size(path) > MAX_BYTES) {
                problems.accept(ReadProblem.ofFile(file, "the file is larger than 16 MiB", "is it the right file?"));
                return new JsonFile(file, Optional.empty(), "");
            }
            byte[] bytes = Files.readAllBytes(path);
            Optional<JsonTree> root =
                    InputText.decode(file, bytes, problems).flatMap(text -> JsonTreeReader.read(file, text, problems));
            return new JsonFile(file, root, ScenarioFolder.sha256(bytes));
        } catch (NoSuchFileException missing) {
            problems.accept(ReadProblem.ofFile(file, "the file is missing", "inputs/SWEEPS.md says what it holds"));
        } catch (IOException unreadable) {
            problems.accept(ReadProblem.ofFile(file, "the file cannot be read", "is it a file, and may you read it?"));
        }
        return new JsonFile(file, Optional.empty(), "");
    }
}
