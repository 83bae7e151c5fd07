package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
    void whatCouplesDepotsIsGeneratedToo() {
        Path fleet = folder.resolve("rollout");

        CommandRun made = CommandRun.of(
                ("generate --depots 5 --crews 2 --phases 3 --budget-share 30% --conversions --tiers --limits --moves "
                                + "--bases --visits --out " + fleet)
                        .split(" "));
        CommandRun checked = CommandRun.of("check", fleet.toString());

        assertThat(made.status()).isZero();
        assertThat(checked.err()).doesNotContain(": error: ");
        for (String table : List.of(
                "phases",
                "region_budgets",
                "crew_phases",
                "price_tiers",
                "delivery_limits",
                "moves",
                "owned",
                "crew_bases")) {
            assertThat(fleet.resolve(table + ".csv")).isNotEmptyFile();
        }
    }

    @Test
    void optionsThatDoNotGoTogetherAreRefused() {
        Path fleet = folder.resolve("rollout");

        CommandRun run = CommandRun.of("generate", "--budget-share", "30%", "--out", fleet.toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("2 phases or more");
        assertThat(fleet).doesNotExist();
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
