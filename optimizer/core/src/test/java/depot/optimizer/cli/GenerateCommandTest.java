package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GenerateCommandTest {

    @TempDir
    private Path folder;

    @Test
    void whatIsGeneratedPassesTheCheck() {
        Path fleet = folder.resolve("new/fleet");

        CommandRun made = CommandRun.of("generate", "--depots", "2", "--crews", "3", "--out", fleet.toString());
        CommandRun checked = CommandRun.of("check", fleet.toString());

        assertThat(made.status()).isZero();
        assertThat(checked.err()).doesNotContain(": error: ");
        assertThat(checked.out()).contains("2 depots, 6 crews");
    }

    @Test
    void aFolderWithFilesIsLeftAlone() throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.csv"), "mine");

        CommandRun run = CommandRun.of("generate", "--out", folder.toString());

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains("left alone");
        assertThat(folder).isDirectoryContaining(mine::equals).isDirectoryNotContaining(other -> !other.equals(mine));
    }
}
