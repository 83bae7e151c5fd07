package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.TwoDepots;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhasedPlanTest {
    private static final ScenarioText LATER = ScenarioText.tiny()
            .column("crews.csv", "petrol_cost_per_year", "900")
            .table("phases.csv", "phase,year\nfirst,0\nsecond,2\n")
            .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,second,\n");

    @TempDir
    private Path folder;

    @Test
    void aCrewThatMayStayOnPetrolInASinglePhaseIsPlanned() {
        String scenario = LATER.without("phases.csv")
                .replace("crew_phases.csv", "second", "")
                .write(folder.resolve("tiny"))
                .toString();
        Path out = folder.resolve("out");

        assertThat(CommandRun.of("plan", scenario, "--out", out.toString()).status())
                .isZero();
        assertThat(out).exists();
    }

    /** By hand: of two crews one can be paid for at first, for 800; the other needs 1,100 later. */
    @Test
    void theSummaryTellsWhatIsPaidAtOnceFromWhatIsPaidLater() {
        String scenario = TwoDepots.inPhases("first,0,1000", "second,2,")
                .write(folder.resolve("two"))
                .toString();
        CommandRun run =
                CommandRun.of("plan", scenario, "--out", folder.resolve("out").toString());

        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("800.00 EUR at once, 2,100.00 EUR over all phases");
    }

    @Test
    void theCheckTakesThem() {
        CommandRun run =
                CommandRun.of("check", LATER.write(folder.resolve("tiny")).toString());

        assertThat(run.status()).isZero();
    }

    /** One phase, now, without a budget, is what a scenario without the table has. */
    @Test
    void aPhaseThatSaysNothingIsPlanned() {
        String scenario = ScenarioText.tiny()
                .table("phases.csv", "phase,year,budget\nall,0,\n")
                .write(folder.resolve("tiny"))
                .toString();
        Path file = folder.resolve("model.mps");
        Stages stages =
                new Stages(CommandRun.none().planner(), (tables, draft, format) -> Files.writeString(draft, "model"));

        assertThat(CommandRun.with(stages, "export", scenario, "--out", file.toString())
                        .status())
                .isZero();
        assertThat(file).hasContent("model");
    }
}
