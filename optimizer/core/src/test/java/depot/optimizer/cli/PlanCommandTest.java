package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.cli.Stages.Outcome;
import depot.optimizer.cli.Stages.Planner;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.Certificate;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.scenario.SolveSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan command around a planner that is not there. */
class PlanCommandTest {

    @TempDir
    private Path folder;

    private String scenario;
    private Path run;

    @BeforeEach
    void writeScenario() {
        scenario = ScenarioText.tiny().write(folder.resolve("tiny")).toString();
        run = folder.resolve("outputs/first");
    }

    @ParameterizedTest
    @CsvSource({"MET, 0", "SHORT, 3", "FAILED, 5"})
    void theStatusSaysHowTheDaysEnd(DayReplay.Outcome days, int status) {
        CommandRun done = plan(returning(FakePlan.of(1000, 998, days)));

        assertThat(done.status()).isEqualTo(status);
        assertThat(run.resolve("plan.json")).exists();
    }

    @Test
    void theSummaryNamesCostBoundGapPurchasesDaysAndPlace() {
        CommandRun done = plan(returning(FakePlan.of(123_456.789, 123_000, DayReplay.Outcome.MET)));

        assertThat(done.out())
                .contains("123,456.79 EUR over 10 years", "123,000.00 EUR", "0.37 % (asked for 0.5 %)", "To buy")
                .contains("150 of 150 depot days", run.toString());
    }

    @Test
    void aGapThatStayedOpenIsToldEvenWhenQuiet() {
        Planner planner = returning(FakePlan.of(1000, 900, DayReplay.Outcome.MET));

        assertThat(plan(planner).err()).contains("gap of 10 %, before the 0.5 % that was asked for");
        assertThat(plan(planner, "--quiet").err().lines())
                .singleElement()
                .asString()
                .contains("gap of 10 %, before the 0.5 % that was asked for");
    }

    @Test
    void progressIsPrintedAndQuietLeavesItOut() {
        Planner planner = (tables, hashes, method, progress, control) -> {
            progress.depotDone("north", 1, 1, Certificate.of(10, 10, 0));
            return FakePlan.of(10, 10, DayReplay.Outcome.MET);
        };

        assertThat(plan(planner).err()).contains("Planned 1 of 1 depots: north");
        assertThat(plan(planner, "--quiet").err()).isEmpty();
    }

    @Test
    void optionsTakeThePlaceOfTheScenariosSettings() {
        List<SolveSettings> seen = new ArrayList<>();
        Planner planner = (tables, hashes, method, progress, control) -> {
            seen.add(tables.solve());
            return FakePlan.of(10, 10, DayReplay.Outcome.MET);
        };
        plan(planner);
        plan(planner, "--gap", "1%", "--nodes", "7", "--threads", "3", "--seed", "5", "--time-limit", "2.5");

        SolveSettings own = seen.get(0);
        assertThat(seen.get(1)).isEqualTo(new SolveSettings(0.01, 7, 2.5, 3, 5, own.handoverMinutes()));
    }

    @Test
    void wrongTablesAreNotPlannedAndNothingIsWritten() {
        scenario = ScenarioText.tiny()
                .replace("circuits.csv", "230", "many")
                .write(folder.resolve("wrong"))
                .toString();

        assertThat(plan(CommandRun.none().planner()).status()).isEqualTo(2);
        assertThat(run.getParent()).doesNotExist();
    }

    @Test
    void aPlaceThatCannotBeWrittenIsRefusedBeforeTheWork() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "kept");
        run = file.resolve("run");
        CommandRun done = plan(CommandRun.none().planner());

        assertThat(done.status()).isEqualTo(1);
        assertThat(done.err()).contains("cannot write " + run, file.toString());
        assertThat(file).hasContent("kept");
    }

    @Test
    void noPlanWithinTheLimitsHasItsOwnStatus() {
        CommandRun done = plan((tables, hashes, method, progress, control) -> {
            throw new UserError(ExitStatus.NO_PLAN, "no plan for depot north within 20 nodes", "Raise --nodes.");
        });

        assertThat(done.status()).isEqualTo(4);
        assertThat(done.err()).contains("no plan for depot north", "Raise --nodes.");
        assertThat(run).doesNotExist();
    }

    @Test
    void aFullMemoryIsToldInOneLine() {
        CommandRun done = plan((tables, hashes, method, progress, control) -> {
            throw new OutOfMemoryError();
        });

        assertThat(done.status()).isEqualTo(1);
        assertThat(done.err()).contains("not enough memory").doesNotContain("\tat ");
    }

    private CommandRun plan(Planner planner, String... more) {
        List<String> line = new ArrayList<>(List.of("plan", scenario, "--out", run.toString()));
        line.addAll(List.of(more));
        return CommandRun.with(new Stages(planner, CommandRun.none().exporter()), line.toArray(new String[0]));
    }

    private static Planner returning(Outcome outcome) {
        return (tables, hashes, method, progress, control) -> outcome;
    }
}
