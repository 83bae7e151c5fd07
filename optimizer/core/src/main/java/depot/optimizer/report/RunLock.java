package depot.optimizer.report;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** Keeps two writers of one run apart. The operating system frees the lock when its holder is killed. */
final class RunLock implements AutoCloseable {

    private final Path file;
    private final FileChannel channel;
    private final String token;

    private RunLock(Path file, FileChannel channel, String token) {
        this.file = file;
        this.channel = channel;
        this.token = token;
    }

    /**
     * Takes the lock at once or not at all.
     *
     * @throws UnwritableRunException if another writer holds it
     */
    static RunLock take(Path file, Path target) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock == null) {
                throw busy(target);
            }
            String token = UUID.randomUUID().toString();
            channel.truncate(0).write(ByteBuffer.wrap(token.getBytes(StandardCharsets.US_ASCII)));
            return new RunLock(file, channel, token);
        } catch (OverlappingFileLockException e) {
            channel.close();
            throw busy(target);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
    }

    /** A former holder may have removed the file between our opening and locking it; then the lock is on a file without a name. */
    void requireHeld() throws IOException {
        if (!Files.exists(file) || !Files.readString(file).equals(token)) {
            throw new IOException("another run of the same name was finishing just now; try again");
        }
    }

    private static UnwritableRunException busy(Path target) {
        return new UnwritableRunException("Another run is writing " + target + ". Wait for it or choose another name.");
    }

    @Override
    public void close() {
        try (channel) {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // A lock file that stays does no harm: the lock itself ends with the channel or the process.
            return;
        }
    }
}
