package depot.optimizer.cli;

import depot.optimizer.report.DraftFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/**
 * Files that appear whole or not at all: something is written in a folder beside its place and moved there when it is
 * finished. What an interrupted run leaves unfinished is deleted on the way out.
 */
final class Unfinished {

    /** Writes a file or folder at a path. */
    @FunctionalInterface
    interface Writing {
        void to(Path path) throws IOException;
    }

    private Unfinished() {}

    /** Writes one file; whatever was at {@code target} stays until the new file is complete. */
    static void writeFile(Path target, Writing writing) throws IOException {
        write(target, writing, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Writes a folder that is not there yet, or is empty.
     *
     * @throws java.nio.file.DirectoryNotEmptyException if {@code target} holds anything
     */
    static void writeFolder(Path target, Writing writing) throws IOException {
        write(target, writing, StandardCopyOption.REPLACE_EXISTING);
    }

    private static void write(Path target, Writing writing, StandardCopyOption... options) throws IOException {
        Path whole = target.toAbsolutePath();
        Path place = Files.createDirectories(whole.getParent());
        // A folder around the draft: whatever the writer leaves beside its file goes with it.
        try (DraftFolder workshop = DraftFolder.create(place.resolve(".unfinished-" + UUID.randomUUID()))) {
            Path draft = workshop.path().resolve(whole.getFileName());
            writing.to(draft);
            workshop.publish(() -> Files.move(draft, whole, options));
        }
    }
}
