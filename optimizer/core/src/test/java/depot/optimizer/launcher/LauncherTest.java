package depot.optimizer.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.launcher.FakeProject.Launch;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** When bin/optimizer and bin/benchmark build, what they start, and from where. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

    @TempDir
    private Path folder;

    private FakeProject project;
    private Path optimizer;

    @BeforeEach
    void makeProject() throws IOException {
        project = new FakeProject(folder);
        optimizer = project.launcher("optimizer");
    }

    @Test
    void buildsOnceAndNotAgain() throws Exception {
        Launch first = project.launch(optimizer, folder, "check", "a b");
        Launch second = project.launch(optimizer, folder, "check", "a b");

        assertThat(project.builds()).isEqualTo(1);
        assertThat(first.err()).contains("building", "words of the build");
        assertThat(second.err()).isEmpty();
        assertThat(second.status()).isZero();
        assertThat(second.out()).isEqualTo(first.out()).endsWith("<depot.optimizer.cli.Optimizer>\n<check>\n<a b>\n");
    }

    @Test
    void buildsAgainWhenASourceChanged() throws Exception {
        project.launch(optimizer, folder);
        Files.setLastModifiedTime(
                project.source("Main.java"), FileTime.from(Instant.now().plusSeconds(5)));
        project.launch(optimizer, folder);

        assertThat(project.builds()).isEqualTo(2);
    }

    @Test
    void buildsAgainWhenASourceWasDeleted() throws Exception {
        project.launch(optimizer, folder);
        Files.delete(project.source("Main.java"));
        Files.setLastModifiedTime(
                project.source("Main.java").getParent(),
                FileTime.from(Instant.now().plusSeconds(5)));
        project.launch(optimizer, folder);

        assertThat(project.builds()).isEqualTo(2);
    }

    @Test
    void runsInTheUsersFolderThroughLinks() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("some where/else"));
        Path absolute = Files.createSymbolicLink(elsewhere.resolve("opt imizer"), optimizer);
        Path relative = Files.createSymbolicLink(elsewhere.resolve("twice"), absolute.getFileName());

        Launch launch = project.launch(relative, elsewhere, "check");

        assertThat(launch.out())
                .startsWith(elsewhere.toRealPath() + "\n")
                .contains("<-Doptimizer.home=" + folder.toRealPath().resolve("my project") + ">");
    }

    @Test
    void twoAtOnceBuildOnce() throws Exception {
        Process one = project.start(optimizer, folder, "check");
        Process other = project.start(optimizer, folder, "check");

        assertThat(FakeProject.finish(one).status()).isZero();
        assertThat(FakeProject.finish(other).status()).isZero();
        assertThat(project.builds()).isEqualTo(1);
    }

    @Test
    void aFailedBuildSaysSoAndIsTriedAgain() throws Exception {
        project.replaceTool("mvn", "echo 'it broke'; exit 1");
        Launch failed = project.launch(optimizer, folder);
        Launch again = project.launch(optimizer, folder);

        assertThat(failed.status()).isEqualTo(1);
        assertThat(failed.out()).isEmpty();
        assertThat(failed.err()).contains("it broke", "the build failed");
        assertThat(again.err()).contains("it broke");
    }

    @Test
    void aMissingMavenIsNamed() throws Exception {
        project.removeTool("mvn");
        Launch launch = project.launch(optimizer, folder);

        assertThat(launch.status()).isEqualTo(1);
        assertThat(launch.err()).contains("needs Maven 3.8");
        assertThat(launch.out()).isEmpty();
    }

    @Test
    void theBenchmarkBuildsTheTestsAndRunsFromThem() throws Exception {
        project.launch(optimizer, folder);
        Launch launch = project.launch(project.launcher("benchmark"), folder, "--sizes", "1,5");
        project.launch(optimizer, folder);

        assertThat(project.builds()).isEqualTo(2);
        assertThat(launch.out())
                .contains("target/test-classes>")
                .endsWith("<depot.optimizer.benchmark.Benchmark>\n<--sizes>\n<1,5>\n");
    }
}
