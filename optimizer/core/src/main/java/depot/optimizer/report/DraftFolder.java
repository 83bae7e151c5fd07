package depot.optimizer.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/**
 * A folder in which something is written before it is moved to its place. It is removed when it is closed, and when the process is told to end,
 * by a signal or otherwise. Only a process that is killed outright leaves it behind.
 */
public final class DraftFolder implements AutoCloseable {

    private static final int ATTEMPTS = 20;
    private static final long PAUSE_NANOS = 20_000_000;

    private final Path path;
    private final Thread cleaner;
    private boolean ended;

    private DraftFolder(Path path) {
        this.path = path;
        this.cleaner = new Thread(this::end, "remove " + path.getFileName());
    }

    /**
     * Makes the folder.
     *
     * @param path nothing is there yet, in a folder that exists
     * @throws IOException if it cannot be made, or the process has been told to end
     */
    public static DraftFolder create(Path path) throws IOException {
        DraftFolder draft = new DraftFolder(path);
        try {
            Runtime.getRuntime().addShutdownHook(draft.cleaner);
        } catch (IllegalStateException e) {
            throw ending(e);
        }
        try {
            draft.publish(() -> Files.createDirectory(path));
        } catch (IOException e) {
            draft.forget();
            throw e;
        }
        return draft;
    }

    /** Where the folder is. */
    public Path path() {
        return path;
    }

    /**
     * Does what must not be done by halves, such as moving the content to its place: a process that is told to end meanwhile waits for it.
     *
     * @throws IOException if the process was told to end before; nothing is done then
     */
    public synchronized void publish(Step step) throws IOException {
        if (ended) {
            throw ending(null);
        }
        step.run();
    }

    private static IOException ending(Throwable cause) {
        return new IOException("the program was told to end", cause);
    }

    /** While the process ends the writer is still at work, and may add a file to a folder that is being emptied. */
    synchronized void end() {
        ended = true;
        removeQuietly(path);
        for (int attempt = 1; attempt < ATTEMPTS && exists(path); attempt++) {
            LockSupport.parkNanos(PAUSE_NANOS);
            removeQuietly(path);
        }
    }

    /** Removes the folder if it is still there. */
    @Override
    public void close() {
        removeQuietly(path);
        forget();
    }

    private void forget() {
        try {
            Runtime.getRuntime().removeShutdownHook(cleaner);
        } catch (IllegalStateException e) {
            // The process is on its way out and runs the cleaner itself.
        }
    }

    /** Removes a folder with all that is in it, as far as that can be done: what stays must not turn a written run into a failed one. */
    static void removeQuietly(Path folder) {
        if (!exists(folder)) {
            return;
        }
        try (Stream<Path> tree = Files.walk(folder)) {
            List<Path> innermostFirst = tree.sorted(Comparator.reverseOrder()).toList();
            for (Path path : innermostFirst) {
                Files.deleteIfExists(path);
            }
        } catch (IOException | UncheckedIOException e) {
            return;
        }
    }

    private static boolean exists(Path folder) {
        return Files.exists(folder, LinkOption.NOFOLLOW_LINKS);
    }

    /** Work on files. */
    @FunctionalInterface
    public interface Step {
        /** Does it. */
        void run() throws IOException;
    }
}
