package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.report.PlanJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayCommandTest {

    @TempDir
    private Path folder;

    private String scenario;

    @BeforeEach
    void writeScenario() {
        scenario = ScenarioText.tiny().write(folder.resolve("tiny")).toString();
    }

    @Test
    void aPlanIsFoundInItsFolderAndByItsName() throws IOException {
        Path file = writePlan();

        CommandRun byFolder = CommandRun.of("replay", scenario, folder.toString());
        CommandRun byName = CommandRun.of("replay", scenario, file.toString());

        assertThat(byFolder).isEqualTo(byName);
        assertThat(byFolder.out()).contains("Tiny: 0 depots", "Days met");
    }

    @Test
    void trialsAreSummedUpAndTheSeedIsSaid() throws IOException {
        writePlan();

        assertThat(CommandRun.of("replay", scenario, folder.toString(), "--trials", "10", "--seed", "7")
                        .out())
                .contains("10 for each depot, seed 7", "0 of 0");
    }

    @Test
    void changedTablesAreNoted() throws IOException {
        writePlan();

        assertThat(CommandRun.of("replay", scenario, folder.toString()).err())
                .contains("not the ones that the plan was made from", "depots.csv");
    }

    @Test
    void aPlanThatCannotBeReadIsWrongInput() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "{ \"half\": ");

        CommandRun broken = CommandRun.of("replay", scenario, folder.toString());
        CommandRun missing =
                CommandRun.of("replay", scenario, folder.resolve("none").toString());

        assertThat(broken.status()).isEqualTo(2);
        assertThat(broken.err()).contains("plan.json").doesNotContain("\tat ");
        assertThat(missing.status()).isEqualTo(2);
    }

    private Path writePlan() throws IOException {
        String plan = PlanJson.write(FakePlan.of(10, 10, DayReplay.Outcome.MET).plan());
        return Files.writeString(folder.resolve("plan.json"), plan);
    }
}
