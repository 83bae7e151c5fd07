package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.spec.LoadedSweep;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.SweepLoader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;

/** Sweeps drawn in text, for tests. */
public final class SweepText {

    /** The scenario whose best plan is worked out by hand on its own page. */
    public static final Path STARTER = Path.of("..", "..", "inputs", "starter");

    private SweepText() {}

    /** The starter, loaded. */
    public static Scenario starter() {
        LoadedScenario loaded = ScenarioLoader.load(STARTER);
        return loaded.scenario().orElseThrow();
    }

    /** Reads a sweep from the members of its file, without the name. */
    public static Sweep of(Scenario scenario, String members) {
        try {
            Path file = Files.createTempFile("sweep", ".json");
            Files.writeString(file, "{\"name\": \"test\", " + members + "}");
            LoadedSweep loaded = SweepLoader.load(file, scenario);
            Files.delete(file);
            assertThat(loaded.findings()).isEmpty();
            return loaded.sweep().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Runs a sweep without a draft. */
    public static SweepResult run(Scenario scenario, String members) {
        return SweepRun.run(of(scenario, members), scenario, new TreeMap<>(), CaseStore.NONE, SweepProgress.SILENT);
    }
}
