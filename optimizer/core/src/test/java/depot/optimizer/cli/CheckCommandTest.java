package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {

    @TempDir
    private Path folder;

    @Test
    void aRightScenarioIsSummedUpInOneLine() {
        Path scenario = ScenarioText.tiny().write(folder.resolve("tiny"));

        CommandRun run = CommandRun.of("check", scenario.toString());

        assertThat(run.status()).isZero();
        assertThat(run.out())
                .isEqualToIgnoringNewLines(
                        "Tiny is ready to be planned: 1 depot, 1 crew, 1 circuit, 3 stops in 1 season; 0 notices.");
    }

    @Test
    void everyErrorIsPrintedWithItsPlaceItsValueAndAHint() {
        Path scenario = ScenarioText.tiny()
                .replace("circuits.csv", "north-1,north,230", "north-1,south,-230")
                .replace("tools.csv", "blue", "green")
                .write(folder.resolve("tiny"));

        CommandRun run = CommandRun.of("check", scenario.toString(), "--quiet");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains(scenario.resolve("circuits.csv") + ":2:volts: error: ", "[-230]")
                .contains("errors in " + scenario + "; nothing was written")
                .contains("; hint: ");
        assertThat(run.err().lines().filter(line -> line.contains(": error: ")).count())
                .isGreaterThan(1);
    }

    @Test
    void aFolderThatIsNotThereIsWrongInput() {
        CommandRun run = CommandRun.of("check", folder.resolve("nowhere").toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("nowhere").doesNotContain("\tat ");
    }

    @Test
    void quietSuccessSaysNothingOnStandardError() {
        Path scenario = ScenarioText.tiny().write(folder.resolve("tiny"));

        assertThat(CommandRun.of("check", "--quiet", scenario.toString()).err()).isEmpty();
        assertThat(CommandRun.of("--quiet", "check", scenario.toString()).err()).isEmpty();
    }
}
