package depot.optimizer.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Files that appear whole or not at all: something is written beside its place under another name and moved there when it is
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
        Path folder = whole.getParent();
        Files.createDirectories(folder);
        // The ending stays, since it may tell the writer which format is wanted.
        Path draft = folder.resolve(
                ".unfinished-%d-%s".formatted(ProcessHandle.current().pid(), whole.getFileName()));
        Thread cleaner = new Thread(() -> delete(draft));
        Runtime.getRuntime().addShutdownHook(cleaner);
        try {
            writing.to(draft);
            Files.move(draft, whole, options);
        } finally {
            delete(draft);
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

    private static void delete(Path path) {
        if (Files.notExists(path)) {
            return;
        }
        try (Stream<Path> parts = Files.walk(path)) {
            List<Path> innermostFirst = parts.sorted(Comparator.reverseOrder()).toList();
            for (Path part : innermostFirst) {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
