package depot.optimizer.report;

import depot.optimizer.plan.Plan;
import depot.optimizer.sweep.CaseStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.UUID;

/**
 * The draft of a sweep: finished plans in a hidden folder beside the sweep's own, one file each. It stays when the sweep is interrupted, so that the
 * next one of the same name goes on from there, and is removed when the sweep is written. One sweep at a time works on it.
 */
public final class CaseFiles implements CaseStore, AutoCloseable {

    private final Path folder;
    private final RunLock lock;

    private CaseFiles(Path folder, RunLock lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /**
     * Opens the draft of a sweep.
     *
     * @param runFolder the sweep's own folder, there or not
     * @throws UnwritableRunException if another sweep of the same name is at work, or the draft cannot be written
     */
    public static CaseFiles open(Path runFolder) throws UnwritableRunException {
        Path target = runFolder.toAbsolutePath().normalize();
        Path folder = target.resolveSibling("." + target.getFileName() + ".cases");
        try {
            Files.createDirectories(folder);
            RunLock lock = RunLock.take(folder.resolveSibling(folder.getFileName() + ".lock"), target);
            return new CaseFiles(folder, lock);
        } catch (UnwritableRunException e) {
            throw e;
        } catch (IOException e) {
            throw new UnwritableRunException("Cannot write the draft " + folder + ": " + e.getMessage(), e);
        }
    }

    /** Where the draft is. */
    public Path folder() {
        return folder;
    }

    /** How many plans are kept. */
    public long count() {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".json")).count();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Optional<Plan> find(String key) {
        Path file = file(key);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            return Optional.of(PlanJson.read(file));
        } catch (UnreadablePlanException e) {
            // Somebody else's hand was in it: the case is planned again.
            return Optional.empty();
        }
    }

    @Override
    public void keep(String key, Plan plan) {
        Path draft = folder.resolve("." + UUID.randomUUID());
        try {
            Files.writeString(draft, PlanJson.write(plan));
            Files.move(draft, file(key), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path file(String key) {
        return folder.resolve(key + ".json");
    }

    /** Removes the draft: the sweep is written. */
    public void remove() {
        DraftFolder.removeQuietly(folder);
    }

    /** Lets other sweeps have the draft. */
    @Override
    public void close() {
        lock.close();
    }
}
