package depot.optimizer.generate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScenarioWriterTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void whatIsWrittenReadsBackAsTheSameFleet(long seed) throws IOException {
        Scenario fleet = FleetGenerator.generate(GeneratorSettings.DEFAULT, seed);
        assertThat(written(fleet)).isEqualTo(fleet);
    }

    @Test
    void everySizeReadsBack() throws IOException {
        GeneratorSettings everything = new GeneratorSettings(2, 9, 8, 6, 4, 4, 7);
        GeneratorSettings least = new GeneratorSettings(1, 1, 2, 1, 1, 1, 1);
        for (GeneratorSettings settings : List.of(everything, least)) {
            Scenario fleet = FleetGenerator.generate(settings, 11);
            assertThat(loaded(fleet, "crews-" + settings.crewsPerDepot())).isEqualTo(fleet);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19})
    void tinyScenariosPassTheChecker(long seed) throws IOException {
        Scenario tiny = TinyScenarios.random(seed);
        assertThat(written(tiny)).isEqualTo(tiny);
    }

    @Test
    void aFolderThatIsThereStaysAsItIs() throws IOException {
        Scenario tiny = TinyScenarios.random(1);
        Path taken = Files.createDirectory(folder.resolve("taken"));
        assertThatThrownBy(() -> ScenarioWriter.write(tiny, taken)).isInstanceOf(FileAlreadyExistsException.class);
        assertThat(namesIn(taken)).isEmpty();
        assertThat(namesIn(folder)).containsExactly("taken");
    }

    @Test
    void nothingButTheFolderIsLeftBehind() throws IOException {
        ScenarioWriter.write(TinyScenarios.random(1), folder.resolve("deep/tiny"));
        assertThat(namesIn(folder.resolve("deep"))).containsExactly("tiny");
    }

    private Scenario written(Scenario scenario) throws IOException {
        return loaded(scenario, "written");
    }

    private Scenario loaded(Scenario scenario, String name) throws IOException {
        Path target = folder.resolve(name);
        ScenarioWriter.write(scenario, target);
        LoadedScenario loaded = ScenarioLoader.load(target);
        assertThat(loaded.findings()).isEmpty();
        return loaded.scenario().orElseThrow();
    }

    private static List<String> namesIn(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
