package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs that a rerun cannot start from: told in one line with a hint, exit status 2, nothing written. */
class BadEarlierRunTest {

    private static final ScenarioText TEXT = ScenarioText.tiny();

    @TempDir
    private static Path shared;

    @TempDir
    private Path folder;

    private Path earlier;
    private Path run;
    private String tables;

    @BeforeEach
    void copyTheRun() throws IOException {
        Path planned = shared.resolve("plan");
        tables = TEXT.write(folder.resolve("tables")).toString();
        if (!Files.exists(planned)) {
            assertThat(CommandRun.of("plan", tables, "--out", planned.toString())
                            .status())
                    .isZero();
        }
        earlier = folder.resolve("earlier");
        try (Stream<Path> files = Files.walk(planned)) {
            for (Path file : files.toList()) {
                Files.copy(file, earlier.resolve(planned.relativize(file).toString()));
            }
        }
        run = folder.resolve("outputs").resolve("rerun");
    }

    @Test
    void theCopyIsFine() {
        assertThat(rerun().status()).isZero();
    }

    @Test
    void ofAnotherScenario() throws IOException {
        Path scenario = Path.of(tables).resolve("scenario.json");
        Files.writeString(scenario, Files.readString(scenario).replace("Tiny", "Huge"));
        refused("is a run of \"Tiny\", and this scenario is \"Huge\"");
    }

    @Test
    void inAnotherCurrency() throws IOException {
        Path scenario = Path.of(tables).resolve("scenario.json");
        Files.writeString(scenario, Files.readString(scenario).replace("EUR", "USD"));
        refused("is in EUR, and the scenario now is in USD");
    }

    @Test
    void withoutAPlan() throws IOException {
        Files.delete(earlier.resolve("plan.json"));
        refused("There is no file", "plan.json");
    }

    @Test
    void withABrokenPlan() throws IOException {
        Files.writeString(earlier.resolve("plan.json"), "{ \"formatVersion\": 2, \"half\": ");
        refused("plan.json");
    }

    @Test
    void ofAnotherFormat() throws IOException {
        Path plan = earlier.resolve("plan.json");
        Files.writeString(plan, Files.readString(plan).replaceFirst("\"formatVersion\": \\d+", "\"formatVersion\": 1"));
        refused("formatVersion is 1, and this version reads", "Make the plan again from its tables");
    }

    @Test
    void withoutItsTables() throws IOException {
        try (Stream<Path> files = Files.list(earlier.resolve("inputs"))) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        refused("a table is missing");
        Files.delete(earlier.resolve("inputs"));
        refused("has no folder inputs with the tables that it was made from", "Runs of older versions lack it");
    }

    @Test
    void withTablesThatWereChanged() throws IOException {
        Path crews = earlier.resolve("inputs").resolve("crews.csv");
        Files.writeString(crews, Files.readString(crews).replace(",8,60", ",9,60"));
        refused("are not those that the run was made from; changed: crews.csv");
    }

    @Test
    void withAPlanThatDoesNotFitItsTables() throws IOException {
        Path plan = earlier.resolve("plan.json");
        Files.writeString(
                plan, Files.readString(plan).replace("\"packType\": \"pack-500\"", "\"packType\": \"pack-9\""));
        refused("plans pack-9 in depot \"north\", which its own tables do not have");
    }

    @Test
    void withAStoreThatCannotBeRead() throws IOException {
        Files.writeString(earlier.resolve("store.csv"), "depot,crew,item,pieces\r\nnorth,,duo,some\r\n");
        refused("store.csv", "line 2, column pieces", "\"some\" is not a number");
    }

    @Test
    void thatWouldBeReplaced() {
        run = earlier;
        CommandRun done = rerun();
        assertThat(done.status()).isEqualTo(2);
        assertThat(done.err()).contains("is the run to start from, and would be replaced", "--run");
        assertThat(earlier.resolve("rerun.html")).doesNotExist();
    }

    @Test
    void withWhatIsThereThatCannotBeRead() throws IOException {
        Path there = earlier.resolve("there.csv");
        Files.writeString(there, "depot,what,crew,item,pieces\r\nnorth,pieces,,duo,some\r\n");
        refused("there.csv", "line 2, column pieces", "\"some\" is not a number");
        Files.writeString(there, "depot,what,crew,item,pieces\r\nnorth,pieces,,duo,1.5\r\n");
        refused("there.csv", "line 2, column pieces", "\"1.5\" is no number of pieces");
        Files.writeString(there, "depot,what,crew,item,pieces\r\nnorth,pieces,,duo,1\r\n");
        refused("There is no begun.csv");
    }

    @Test
    void aWeightOfTheRoutineNeedsARun() {
        CommandRun done = CommandRun.of("plan", tables, "--keep-routine", "3", "--out", run.toString());
        assertThat(done.status()).isEqualTo(2);
        assertThat(done.err()).contains("--keep-routine", "--from");
        assertThat(run.getParent()).doesNotExist();
    }

    private void refused(String... words) {
        CommandRun done = rerun();
        assertThat(done.status()).as(done.err()).isEqualTo(2);
        assertThat(done.err()).contains(words).doesNotContain("\tat ");
        assertThat(done.out()).isEmpty();
        assertThat(run.getParent()).doesNotExist();
    }

    private CommandRun rerun() {
        return CommandRun.of("plan", tables, "--from", earlier.toString(), "--out", run.toString());
    }
}
