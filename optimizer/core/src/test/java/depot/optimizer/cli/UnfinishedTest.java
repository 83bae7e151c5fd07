package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnfinishedTest {

    @TempDir
    private Path folder;

    @Test
    void theOldFileStaysUntilTheNewOneIsWhole() throws IOException {
        Path file = Files.writeString(folder.resolve("model.mps"), "old");

        assertThatThrownBy(() -> Unfinished.writeFile(file, draft -> {
                    Files.writeString(draft, "half");
                    throw new IOException("disk full");
                }))
                .hasMessage("disk full");

        assertThat(file).hasContent("old");
        assertThat(folder).isDirectoryContaining(file::equals).isDirectoryNotContaining(other -> !other.equals(file));
    }

    @Test
    void aDraftKeepsTheEndingAndTakesItsPlace() throws IOException {
        Path file = folder.resolve("new/model.lp");

        Unfinished.writeFile(file, draft -> {
            assertThat(draft.toString()).endsWith(".lp");
            Files.writeString(draft, "whole");
        });

        assertThat(file).hasContent("whole");
    }

    @Test
    void aFolderWithContentIsLeftAlone() throws IOException {
        Path kept = Files.writeString(folder.resolve("mine.txt"), "mine");

        assertThatThrownBy(() -> Unfinished.writeFolder(folder, draft -> {
                    Files.createDirectories(draft);
                    Files.writeString(draft.resolve("theirs.txt"), "theirs");
                }))
                .isInstanceOf(java.nio.file.DirectoryNotEmptyException.class);

        assertThat(kept).hasContent("mine");
        assertThat(folder.resolve("theirs.txt")).doesNotExist();
    }
}
