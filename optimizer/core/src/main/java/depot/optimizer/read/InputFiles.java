package depot.optimizer.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The files of a scenario as they stand on the disk, byte by byte. */
public final class InputFiles {
    private InputFiles() {}

    /**
     * Reads files again that were read before.
     *
     * @param hashes SHA-256 of each file when it was read, by name
     * @throws IOException if a file cannot be read, or is no longer what it was
     */
    public static SortedMap<String, byte[]> read(Path folder, Map<String, String> hashes) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (Map.Entry<String, String> file : hashes.entrySet()) {
            byte[] bytes = Files.readAllBytes(folder.resolve(file.getKey()));
            if (!ScenarioFolder.sha256(bytes).equals(file.getValue())) {
                throw new IOException(folder.resolve(file.getKey()) + " was changed while it was being read");
            }
            files.put(file.getKey(), bytes);
        }
        return files;
    }
}
