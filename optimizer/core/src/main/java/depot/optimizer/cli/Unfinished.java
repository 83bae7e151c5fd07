package depot.optimizer.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

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

    private static final int ATTEMPTS = 20;
    private static final long PAUSE_NANOS = 20_000_000;

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
        Path workshop = Files.createTempDirectory(place, ".unfinished-");
        Thread cleaner = new Thread(() -> deleteInTheEnd(workshop));
        Runtime.getRuntime().addShutdownHook(cleaner);
        try {
            Path draft = workshop.resolve(whole.getFileName());
            writing.to(draft);
            Files.move(draft, whole, options);
        } finally {
            delete(workshop);
            forget(cleaner);
        }
    }

    private static void forget(Thread cleaner) {
        try {
            Runtime.getRuntime().removeShutdownHook(cleaner);
        } catch (IllegalStateException e) {
            // The process is on its way out and runs the cleaner itself.
        }
    }

    /** While the process ends the writer is still at work, and may add a file to a folder that is being emptied. */
    private static void deleteInTheEnd(Path workshop) {
        for (int attempt = 0; attempt < ATTEMPTS && Files.exists(workshop); attempt++) {
            try {
                delete(workshop);
            } catch (IOException | UncheckedIOException e) {
                LockSupport.parkNanos(PAUSE_NANOS);
            }
        }
    }

    private static void delete(Path path) throws IOException {
        if (Files.notExists(path)) {
            return;
        }
        try (Stream<Path> parts = Files.walk(path)) {
            List<Path> innermostFirst = parts.sorted(Comparator.reverseOrder()).toList();
            for (Path part : innermostFirst) {
                Files.deleteIfExists(part);
            }
        }
    }
}
