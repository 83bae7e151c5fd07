package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DraftFolderTest {

    private static final int SECONDS = 30;

    @TempDir
    private Path folder;

    @Test
    void isRemovedWhenClosed() throws IOException {
        try (DraftFolder draft = DraftFolder.create(folder.resolve("draft"))) {
            fill(draft);
        }

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void isRemovedWhenTheProcessEndsAndThenNothingIsPublished() throws IOException {
        try (DraftFolder draft = DraftFolder.create(folder.resolve("draft"))) {
            fill(draft);
            draft.end();

            assertThat(folder).isEmptyDirectory();
            assertThatIOException()
                    .isThrownBy(() -> draft.publish(() -> Files.createDirectory(folder.resolve("run"))))
                    .withMessageContaining("told to end");
        }

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void leavesAloneWhatIsThereAlready() throws IOException {
        Path other = Files.createDirectory(folder.resolve("draft"));

        assertThatIOException()
                .isThrownBy(() -> DraftFolder.create(other))
                .isInstanceOf(FileAlreadyExistsException.class);
        assertThat(other).exists();
    }

    /** A process of its own, ended as the shell does it. The file that it locked may stay, as the lock itself ends with the process. */
    @Test
    void aRunThatIsToldToEndLeavesNoDraft() throws IOException, InterruptedException {
        Path run = folder.resolve("run");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        SlowWriter.class.getName(),
                        run.toString())
                .redirectErrorStream(true)
                .start();
        try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
            assertThat(out.readLine()).isEqualTo("writing");
            process.destroy();

            assertThat(process.waitFor(SECONDS, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }

        assertThat(run).doesNotExist();
        try (var left = Files.list(folder)) {
            assertThat(left).allSatisfy(path -> assertThat(path).isRegularFile());
        }
    }

    private static void fill(DraftFolder draft) throws IOException {
        Path deep = Files.createDirectories(draft.path().resolve("a/b"));
        Files.writeString(deep.resolve("c.csv"), "d");
    }

    /** Writes half a run and waits. */
    static final class SlowWriter {

        private SlowWriter() {}

        public static void main(String[] arguments) throws IOException {
            new RunFolder(Path.of(arguments[0])).replace(draft -> {
                Files.writeString(draft.resolve(PlanJson.FILE_NAME), "half");
                System.out.println("writing");
                try {
                    Thread.sleep(TimeUnit.SECONDS.toMillis(SECONDS));
                } catch (InterruptedException e) {
                    throw new IOException(e);
                }
            });
        }
    }
}
