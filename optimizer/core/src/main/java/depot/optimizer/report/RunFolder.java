package depot.optimizer.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder that is replaced whole or not at all. The new content is written beside it first; then the old folder is moved aside, the new
 * one into its place, and the old one is removed. What a killed writer left behind is put right by the next one.
 */
public final class RunFolder {

    private static final String NEW = ".new-";
    private static final String OLD = ".old-";

    private final Path target;
    private final String marker;
    private final Path parent;
    private final String name;

    /** The folder of a run. */
    RunFolder(Path target) throws UnwritableRunException {
        this(target, PlanJson.FILE_NAME);
    }

    /**
     * A folder that is there already, or is to be made.
     *
     * @param marker name of the file by which a folder is known that may be replaced
     * @throws UnwritableRunException if the path cannot be a folder of its own
     */
    public RunFolder(Path target, String marker) throws UnwritableRunException {
        this.marker = marker;
        this.target = target.toAbsolutePath().normalize();
        this.parent = this.target.getParent();
        if (parent == null) {
            throw new UnwritableRunException("A run needs a folder of its own; " + target + " is none.");
        }
        this.name = this.target.getFileName().toString();
    }

    /**
     * Replaces the folder's content.
     *
     * @throws UnwritableRunException if that fails; the folder is then as it was before
     */
    public void replace(Content content) throws UnwritableRunException {
        requireReplaceable();
        Path fresh = parent.resolve("." + name + NEW + UUID.randomUUID());
        try {
            Files.createDirectories(parent);
            try (RunLock lock = RunLock.take(parent.resolve("." + name + ".lock"), target)) {
                lock.requireHeld();
                repair();
                write(content, fresh);
            }
        } catch (UnwritableRunException e) {
            throw e;
        } catch (IOException | UncheckedIOException e) {
            throw new UnwritableRunException("Cannot write " + target + ": " + words(e) + ". Nothing was changed.", e);
        }
    }

    private void write(Content content, Path fresh) throws IOException {
        try (DraftFolder draft = DraftFolder.create(fresh)) {
            content.writeTo(draft.path());
            draft.publish(() -> {
                swap(fresh);
                tidy();
            });
        }
    }

    /** Never replaces a folder that some other work is in. */
    void requireReplaceable() throws UnwritableRunException {
        if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        if (!Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new UnwritableRunException(target + " exists and is not a folder. Choose another name for the run.");
        }
        try (Stream<Path> entries = Files.list(target)) {
            if (!Files.exists(target.resolve(marker)) && entries.findAny().isPresent()) {
                throw new UnwritableRunException(
                        "%s exists and holds no run of this kind (there is no %s in it), so it is left alone."
                                .formatted(target, marker)
                                .concat(" Choose another name for the run."));
            }
        } catch (IOException e) {
            throw new UnwritableRunException("Cannot look into " + target + ": " + words(e) + ".", e);
        }
    }

    private void swap(Path fresh) throws IOException {
        Path old = parent.resolve("." + name + OLD + UUID.randomUUID());
        boolean replaced = Files.exists(target);
        if (replaced) {
            Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
        }
        try {
            Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            if (replaced) {
                Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
            }
            throw e;
        }
    }

    /** Puts an old run back that lost its place when its successor was killed between two moves; removes all other leftovers. */
    private void repair() throws IOException {
        for (Path old : leftovers(OLD)) {
            if (Files.exists(target)) {
                DraftFolder.removeQuietly(old);
            } else {
                Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
            }
        }
        leftovers(NEW).forEach(DraftFolder::removeQuietly);
    }

    /** The run is written: whatever fails from here on is left to the next one. */
    private void tidy() {
        try {
            leftovers(OLD).forEach(DraftFolder::removeQuietly);
        } catch (IOException | UncheckedIOException e) {
            return;
        }
    }

    /** Only names that this class makes for this run: other runs, with longer names, may be at work beside it. */
    private List<Path> leftovers(String kind) throws IOException {
        Pattern made = Pattern.compile(Pattern.quote("." + name + kind) + "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
        try (Stream<Path> siblings = Files.list(parent)) {
            return siblings.filter(
                            path -> made.matcher(path.getFileName().toString()).matches())
                    .sorted()
                    .toList();
        }
    }

    private static String words(Exception e) {
        Throwable cause = e instanceof UncheckedIOException ? e.getCause() : e;
        if (cause instanceof AccessDeniedException denied) {
            return "no permission for " + denied.getFile();
        }
        if (cause instanceof NotDirectoryException || cause instanceof FileAlreadyExistsException) {
            return ((FileSystemException) cause).getFile() + " is not a folder";
        }
        if (cause instanceof FileSystemException problem) {
            return problem.getFile() + (problem.getReason() == null ? "" : ": " + problem.getReason());
        }
        return String.valueOf(cause.getMessage());
    }

    /** Writes a run's files into an empty folder. */
    public interface Content {
        /** Writes them. */
        void writeTo(Path folder) throws IOException;
    }
}
