package depot.optimizer.demo;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The scenarios that come with the project. */
class DemoInputsTest {
    private static final Path INPUTS = Path.of("..", "..", "inputs");

    @ParameterizedTest
    @ValueSource(strings = {"fennmoor", "starter"})
    void nothingIsFoundWrong(String name) {
        assertThat(ScenarioLoader.load(INPUTS.resolve(name)).findings()).isEmpty();
    }

    @Test
    void fennmoorIsTheFullDemo() {
        Scenario fennmoor = scenario("fennmoor");
        assertThat(fennmoor.depots()).hasSizeGreaterThanOrEqualTo(6);
        assertThat(fennmoor.crews()).hasSize(36);
        assertThat(fennmoor.seasons()).hasSize(4);
        assertThat(fennmoor.packTypes().stream().map(PackType::family).distinct())
                .hasSize(2);
        assertThat(fennmoor.packTypes()).hasSize(4);
        assertThat(fennmoor.chargerTypes()).hasSize(7);
        assertThat(fennmoor.sharingUnitTypes()).hasSize(2);
        assertThat(fennmoor.powerBankTypes()).hasSize(1);
        assertThat(fennmoor.stops()).anyMatch(stop -> stop.siteWatts() > 0);
        assertThat(fennmoor.crews()).anyMatch(crew -> crew.vehicleWatts() > 0);
        assertThat(fennmoor.depots())
                .anyMatch(depot -> depot.staffedFromMinute().isPresent());
    }

    /** The table of packs in its README: rated energy x usable share x health x season. */
    @Test
    void fennmoorsPacksHoldWhatItsReadmeSays() {
        Scenario fennmoor = scenario("fennmoor");
        assertThat(energies(fennmoor, "hand-360")).containsExactly(262, 275, 253, 207);
        assertThat(energies(fennmoor, "back-800")).containsExactly(581, 612, 563, 459);
        assertThat(energies(fennmoor, "back-1500")).containsExactly(1090, 1148, 1056, 861);
    }

    private static List<Integer> energies(Scenario scenario, String pack) {
        PackType type = scenario.packTypes().stream()
                .filter(candidate -> candidate.id().equals(pack))
                .findFirst()
                .orElseThrow();
        return scenario.seasons().stream()
                .map(season -> energy(scenario, type, season))
                .toList();
    }

    private static int energy(Scenario scenario, PackType type, Season season) {
        double exact = type.capacityWh() * type.usableShare() * scenario.packHealth() * season.packCapacityFactor();
        return (int) Math.round(exact);
    }

    private static Scenario scenario(String name) {
        LoadedScenario loaded = ScenarioLoader.load(INPUTS.resolve(name));
        return loaded.scenario().orElseThrow(() -> new AssertionError(loaded.findings()));
    }
}
