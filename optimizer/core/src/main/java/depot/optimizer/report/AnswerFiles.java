package depot.optimizer.report;

import com.fasterxml.jackson.databind.json.JsonMapper;
import depot.optimizer.plan.DepotPlan;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * What a long run has worked out so far: plans of depots in a hidden folder beside the run's own, one compressed file each. They stay when the run is
 * broken off, so that the next one of the same name and the same inputs goes on from there, and are removed when the run is written. Answers can always
 * be worked out again: a file that cannot be read or written is done without.
 */
public final class AnswerFiles {

    /** A run that is over sooner keeps nothing. */
    private static final Duration SHORT_RUN = Duration.ofSeconds(10);

    private static final String KEY = "inputs.sha256";
    private static final String ENDING = ".json.gz";
    private static final JsonMapper MAPPER = PlanMapper.create();

    private final Path folder;
    private final String key;
    private final long keepFrom;

    private AnswerFiles(Path folder, String key, Duration keepAfter) {
        this.folder = folder;
        this.key = key;
        keepFrom = System.nanoTime() + keepAfter.toNanos();
    }

    /**
     * What is kept of a depot.
     *
     * @param question to the last digit
     * @param bound no plan of the depot costs less
     * @param phases its plans
     */
    public record Kept(String question, double bound, List<DepotPlan> phases) {}

    /**
     * Opens what an earlier run of the same name has left, and removes it where it belongs to other inputs.
     *
     * @param runFolder the run's own folder, there or not
     * @param inputs everything that answers depend on, in words
     */
    public static AnswerFiles open(Path runFolder, String inputs) {
        return open(runFolder, inputs, SHORT_RUN);
    }

    static AnswerFiles open(Path runFolder, String inputs, Duration keepAfter) {
        Path target = runFolder.toAbsolutePath().normalize();
        Path folder = target.resolveSibling("." + target.getFileName() + ".answers");
        AnswerFiles files = new AnswerFiles(folder, sha256(inputs), keepAfter);
        if (Files.exists(folder) && !files.belongs()) {
            files.remove();
        }
        return files;
    }

    private boolean belongs() {
        try {
            return Files.readString(folder.resolve(KEY)).equals(key);
        } catch (IOException e) {
            return false;
        }
    }

    /** How many answers there are. */
    public long count() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING)).count();
        } catch (IOException e) {
            return 0;
        }
    }

    /** The answer to a question that was asked before. */
    public Optional<Kept> find(String question) {
        Path file = file(question);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try (InputStream in = new GZIPInputStream(Files.newInputStream(file))) {
            Kept kept = MAPPER.readValue(in, Kept.class);
            return kept.question().equals(question) ? Optional.of(kept) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** Keeps an answer, once the run has gone on for a while. */
    public void keep(Kept kept) {
        if (System.nanoTime() - keepFrom < 0) {
            return;
        }
        Path draft = folder.resolve("." + UUID.randomUUID());
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(KEY), key);
            try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(draft))) {
                out.write(MAPPER.writeValueAsBytes(kept));
            }
            Files.move(draft, file(kept.question()), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            discard(draft);
        }
    }

    private static void discard(Path draft) {
        try {
            Files.deleteIfExists(draft);
        } catch (IOException e) {
            return;
        }
    }

    /** Removes all answers: the run is written. */
    public void remove() {
        DraftFolder.removeQuietly(folder);
    }

    private Path file(String question) {
        return folder.resolve(sha256(question) + ENDING);
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
