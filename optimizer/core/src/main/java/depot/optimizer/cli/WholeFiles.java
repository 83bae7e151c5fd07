package depot.optimizer.cli;

import depot.optimizer.report.DraftFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.SortedMap;
import java.util.UUID;

/** Several files of one folder that change together: all of them or, when one cannot be written, none. */
final class WholeFiles {

    private WholeFiles() {}

    /**
     * Makes or replaces files.
     *
     * @param folder is made when it is missing
     * @param texts contents by name of the file
     * @throws IOException if one of them cannot be written; then all are as they were
     */
    static void write(Path folder, SortedMap<String, String> texts) throws IOException {
        Path place = Files.createDirectories(folder.toAbsolutePath());
        try (DraftFolder draft = DraftFolder.create(place.resolve(".unfinished-" + UUID.randomUUID()))) {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                Files.writeString(draft.path().resolve(text.getKey()), text.getValue());
            }
            draft.publish(() -> moveAll(draft.path(), place, texts));
        }
    }

    private static void moveAll(Path draft, Path place, SortedMap<String, String> texts) throws IOException {
        Deque<Path> moved = new ArrayDeque<>();
        Path old = Files.createDirectory(draft.resolve("old"));
        try {
            for (String name : texts.keySet()) {
                Path target = target(place.resolve(name));
                if (Files.exists(target)) {
                    Files.copy(target, old.resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
                }
                Files.move(draft.resolve(name), target, StandardCopyOption.REPLACE_EXISTING);
                moved.push(place.resolve(name));
            }
        } catch (IOException e) {
            for (Path file : moved) {
                putBack(old.resolve(file.getFileName()), file);
            }
            throw e;
        }
    }

    /** A link stays a link: what it points to is replaced. */
    private static Path target(Path file) throws IOException {
        return Files.exists(file) ? file.toRealPath() : file;
    }

    private static void putBack(Path old, Path file) throws IOException {
        if (Files.exists(old)) {
            Files.move(old, target(file), StandardCopyOption.REPLACE_EXISTING);
        } else {
            Files.delete(file);
        }
    }
}
