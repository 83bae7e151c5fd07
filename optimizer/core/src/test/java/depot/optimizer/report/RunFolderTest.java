package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunFolderTest {

    private static final UUID OF_ANOTHER_RUN = UUID.randomUUID();

    @TempDir
    private Path outputs;

    @Test
    void writesIntoAFolderWithMissingParents() throws IOException {
        Path run = outputs.resolve("a/b/run");
        new RunFolder(run).replace(folder -> Files.writeString(folder.resolve("plan.json"), "1"));

        assertThat(run.resolve("plan.json")).hasContent("1");
        assertThat(names(outputs.resolve("a/b"))).containsExactly("run");
    }

    @Test
    void leavesNothingWhenTheWriterFails() throws IOException {
        assertThatThrownBy(() -> new RunFolder(outputs.resolve("run")).replace(RunFolderTest::failHalfway))
                .isInstanceOf(UnwritableRunException.class)
                .hasMessageContaining("disk full")
                .hasMessageContaining("Nothing was changed");

        assertThat(names(outputs)).isEmpty();
    }

    @Test
    void leavesNothingWhenTheWriterBreaksDown() throws IOException {
        assertThatThrownBy(() -> new RunFolder(outputs.resolve("run")).replace(folder -> {
                    throw new IllegalStateException("bug");
                }))
                .isInstanceOf(IllegalStateException.class);

        assertThat(names(outputs)).isEmpty();
    }

    @Test
    void keepsTheOldRunWhenTheWriterFails() throws IOException {
        Path run = run("old");

        assertThatThrownBy(() -> new RunFolder(run).replace(RunFolderTest::failHalfway))
                .isInstanceOf(UnwritableRunException.class);

        assertThat(run.resolve("plan.json")).hasContent("old");
        assertThat(names(run)).containsExactly("plan.json");
        assertThat(names(outputs)).containsExactly("run");
    }

    @Test
    void replacesTheOldRunWhole() throws IOException {
        Path run = run("old");
        Files.writeString(run.resolve("former.csv"), "x");

        new RunFolder(run).replace(folder -> Files.writeString(folder.resolve("plan.json"), "new"));

        assertThat(names(run)).containsExactly("plan.json");
        assertThat(run.resolve("plan.json")).hasContent("new");
        assertThat(names(outputs)).containsExactly("run");
    }

    @Test
    void removesWhatKilledRunsLeftOfThisNameOnly() throws IOException {
        Files.createDirectories(outputs.resolve(".run.new-" + UUID.randomUUID() + "/deep"));
        Files.createDirectories(outputs.resolve(".run.new-x.new-" + OF_ANOTHER_RUN));
        Files.writeString(outputs.resolve(".run.lock"), "of a killed run");

        new RunFolder(outputs.resolve("run")).replace(folder -> Files.writeString(folder.resolve("plan.json"), "1"));

        assertThat(names(outputs)).containsExactly(".run.new-x.new-" + OF_ANOTHER_RUN, "run");
    }

    @Test
    void putsARunBackThatAKilledRunHadMovedAside() throws IOException {
        Path aside = Files.createDirectories(outputs.resolve(".run.old-" + UUID.randomUUID()));
        Files.writeString(aside.resolve("plan.json"), "old");

        assertThatThrownBy(() -> new RunFolder(outputs.resolve("run")).replace(RunFolderTest::failHalfway))
                .isInstanceOf(UnwritableRunException.class);

        assertThat(outputs.resolve("run/plan.json")).hasContent("old");
        assertThat(names(outputs)).containsExactly("run");
    }

    @Test
    void leavesAFolderAloneThatHoldsOtherWork() throws IOException {
        Path other = Files.createDirectories(outputs.resolve("photos"));
        Files.writeString(other.resolve("cat.txt"), "meow");

        assertThatThrownBy(() -> new RunFolder(other).replace(folder -> {}))
                .isInstanceOf(UnwritableRunException.class)
                .hasMessageContaining("holds no run");
        assertThat(other.resolve("cat.txt")).hasContent("meow");
    }

    @Test
    void saysWhenTheTargetOrItsParentIsAFile() throws IOException {
        Path file = Files.writeString(outputs.resolve("file"), "x");

        assertThatThrownBy(() -> new RunFolder(file).replace(folder -> {}))
                .isInstanceOf(UnwritableRunException.class)
                .hasMessageContaining("is not a folder");
        assertThatThrownBy(() -> new RunFolder(file.resolve("run")).replace(folder -> {}))
                .isInstanceOf(UnwritableRunException.class)
                .hasMessageContaining("is not a folder");
        assertThatThrownBy(() -> new RunFolder(Path.of("/"))).isInstanceOf(UnwritableRunException.class);
    }

    @Test
    void refusesTwoWritersOfOneRun() throws IOException {
        Path run = outputs.resolve("run");

        new RunFolder(run).replace(folder -> {
            Files.writeString(folder.resolve("plan.json"), "first");
            assertThatThrownBy(() -> new RunFolder(run).replace(second -> {}))
                    .isInstanceOf(UnwritableRunException.class)
                    .hasMessageContaining("Another run is writing");
        });

        assertThat(run.resolve("plan.json")).hasContent("first");
    }

    private Path run(String content) throws IOException {
        Path run = Files.createDirectories(outputs.resolve("run"));
        Files.writeString(run.resolve("plan.json"), content);
        return run;
    }

    private static void failHalfway(Path folder) throws IOException {
        Files.writeString(folder.resolve("plan.json"), "half");
        throw new IOException("disk full");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
