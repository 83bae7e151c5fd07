package depot.optimizer.check;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScenarioLoaderTest {
    @TempDir
    Path folder;

    @Test
    void theTinyScenarioLoadsWithoutFindings() {
        LoadedScenario loaded = ScenarioLoader.load(ScenarioText.tiny().write(folder));
        assertThat(loaded.findings()).isEmpty();
        Scenario scenario = loaded.scenario().orElseThrow();
        assertThat(scenario.name()).isEqualTo("Tiny");
        assertThat(scenario.stops()).hasSize(3);
        assertThat(scenario.solve()).isEqualTo(SolveSettings.DEFAULT);
        assertThat(loaded.inputHashes()).hasSize(12);
    }
}
