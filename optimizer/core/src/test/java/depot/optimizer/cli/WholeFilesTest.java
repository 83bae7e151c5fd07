package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {

    @TempDir
    private Path folder;

    @Test
    void filesAreMadeAndReplaced() throws IOException {
        Files.writeString(folder.resolve("a.csv"), "old");

        WholeFiles.write(folder, new TreeMap<>(Map.of("a.csv", "new a", "b.csv", "new b")));

        assertThat(folder.resolve("a.csv")).hasContent("new a");
        assertThat(folder.resolve("b.csv")).hasContent("new b");
        assertThat(folder)
                .isDirectoryNotContaining(path -> path.getFileName().toString().startsWith("."));
    }

    @Test
    void whenTheLastCannotBeWrittenTheOthersAreAsBefore() throws IOException {
        Files.writeString(folder.resolve("a.csv"), "old");
        Files.createDirectories(folder.resolve("c.csv/in the way"));

        assertThatThrownBy(() -> WholeFiles.write(
                        folder, new TreeMap<>(Map.of("a.csv", "new a", "b.csv", "new b", "c.csv", "new c"))))
                .isInstanceOf(IOException.class);

        assertThat(folder.resolve("a.csv")).hasContent("old");
        assertThat(folder.resolve("b.csv")).doesNotExist();
        assertThat(folder.resolve("c.csv/in the way")).exists();
        assertThat(folder)
                .isDirectoryNotContaining(path -> path.getFileName().toString().startsWith("."));
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path real = Files.writeString(folder.resolve("real.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), real);

        WholeFiles.write(folder, new TreeMap<>(Map.of("link.csv", "new")));

        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("new");
    }
}
