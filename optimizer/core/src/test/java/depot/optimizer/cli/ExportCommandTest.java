package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.scenario.Depot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The export command around an exporter that writes the format and the depots it was given. */
class ExportCommandTest {

    private static final Stages STAGES = new Stages(
            CommandRun.none().planner(),
            (scenario, file, format) -> Files.writeString(
                    file,
                    format + " " + scenario.depots().stream().map(Depot::id).collect(Collectors.joining(","))));

    @TempDir
    private Path folder;

    private String scenario;

    @BeforeEach
    void writeScenario() {
        scenario = ScenarioText.tiny()
                .rows("depots.csv", "south,South yard,flat,400,3,63,10")
                .write(folder.resolve("tiny"))
                .toString();
    }

    @Test
    void writesAllDepotsInOneFile() {
        Path file = folder.resolve("new/model.mps");

        CommandRun run = CommandRun.with(STAGES, "export", scenario, "--out", file.toString());

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains(file.toString());
        assertThat(file).hasContent("MPS north,south");
    }

    @Test
    void writesOneDepotInTheFormatAskedFor() {
        Path file = folder.resolve("south.lp");

        CommandRun.with(STAGES, "export", scenario, "--depot", "south", "--format", "lp", "--out", file.toString());

        assertThat(file).hasContent("LP south");
    }

    @Test
    void anUnknownDepotIsAnsweredWithTheKnownOnes() {
        CommandRun run = CommandRun.with(STAGES, "export", scenario, "--depot", "west", "--out", folder + "/x.mps");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("no depot \"west\"", "north, south");
        assertThat(folder.resolve("x.mps")).doesNotExist();
    }

    @Test
    void aFolderIsNoPlaceForAFile() throws IOException {
        Path taken = Files.createDirectories(folder.resolve("taken"));

        CommandRun run = CommandRun.with(CommandRun.none(), "export", scenario, "--out", taken.toString());

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).contains("it is a folder");
    }
}
