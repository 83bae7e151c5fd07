package depot.optimizer.generate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.time.DayOfWeek;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FleetGeneratorTest {
    private static final GeneratorSettings FIFTY = GeneratorSettings.DEFAULT.withDepots(50);

    @Test
    void theSameSeedGivesTheSameFleet() {
        assertThat(FleetGenerator.generate(GeneratorSettings.DEFAULT, 5))
                .isEqualTo(FleetGenerator.generate(GeneratorSettings.DEFAULT, 5));
    }

    @Test
    void anotherSeedGivesAnotherFleet() {
        Scenario one = FleetGenerator.generate(GeneratorSettings.DEFAULT, 5);
        Scenario other = FleetGenerator.generate(GeneratorSettings.DEFAULT, 6);
        assertThat(one.circuits()).isNotEqualTo(other.circuits());
        assertThat(one.stops()).isNotEqualTo(other.stops());
        assertThat(one.work()).isNotEqualTo(other.work());
    }

    @Test
    void aBiggerFleetKeepsTheDepotsOfASmallerOne() {
        Scenario small = FleetGenerator.generate(GeneratorSettings.DEFAULT.withDepots(2), 5);
        Scenario big = FleetGenerator.generate(GeneratorSettings.DEFAULT, 5);
        assertThat(big.depots()).startsWith(small.depots().toArray(Depot[]::new));
        assertThat(big.stops()).startsWith(small.stops().toArray(RouteStop[]::new));
    }

    @Test
    void sizesAreAsAsked() {
        Scenario fleet = FleetGenerator.generate(new GeneratorSettings(3, 4, 6, 5, 3, 2, 6), 1);
        assertThat(fleet.depots()).hasSize(3);
        assertThat(fleet.crews()).hasSize(12);
        assertThat(fleet.circuits()).hasSize(18);
        assertThat(fleet.chargerTypes()).hasSize(5);
        assertThat(fleet.packTypes()).hasSize(3);
        assertThat(fleet.seasons()).hasSize(2);
        assertThat(fleet.stops())
                .filteredOn(stop -> stop.days().contains(DayOfWeek.SATURDAY))
                .isNotEmpty();
    }

    @Test
    void aSizeOutOfRangeIsRefusedByName() {
        assertThatThrownBy(() -> GeneratorSettings.DEFAULT.withDepots(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("depots is 0");
    }

    @Test
    void aFleetHasAllKindsOfDepots() {
        Scenario fleet = FleetGenerator.generate(FIFTY, 1);
        assertThat(fleet.depots()).anyMatch(depot -> depot.staffedFromMinute().isPresent());
        assertThat(fleet.depots()).anyMatch(Depot::upgradeOffered).anyMatch(depot -> !depot.upgradeOffered());
        assertThat(fleet.circuits()).anyMatch(Circuit::candidate).anyMatch(circuit -> circuit.breakerAmps() == 10);
        assertThat(fleet.stops()).anyMatch(stop -> stop.siteWatts() > 0);
        assertThat(fleet.crews()).anyMatch(crew -> crew.vehicleWatts() > 0);
        assertThat(fleet.owned()).isNotEmpty();
        Map<String, String> bases = fleet.crews().stream().collect(Collectors.toMap(Crew::id, Crew::depot));
        assertThat(fleet.stops())
                .as("a crew is back at lunch")
                .anyMatch(stop ->
                        stop.place().equals(bases.get(stop.crew())) && stop.leaveMinute() > stop.arriveMinute());
    }

    /** Energies that the settings promise, in full packs of 275 Wh (hand) and 918 Wh (back) at health 0.85. */
    @Test
    void aCrewDayNeedsFourToTwelvePacks() {
        Scenario fleet = FleetGenerator.generate(FIFTY.withCalendar(4, 5), 1);
        Map<String, Tool> tools = fleet.tools().stream().collect(Collectors.toMap(Tool::id, Function.identity()));
        Map<String, Season> seasons =
                fleet.seasons().stream().collect(Collectors.toMap(Season::id, Function.identity()));
        Map<String, Double> packs = fleet.work().stream()
                .collect(Collectors.groupingBy(
                        row -> row.season() + " " + row.days() + " " + row.crew(),
                        Collectors.summingDouble(row -> packs(row, tools, seasons))));
        assertThat(packs.values()).allSatisfy(count -> assertThat(count).isBetween(3.0, 10.0));
    }

    private static double packs(Work row, Map<String, Tool> tools, Map<String, Season> seasons) {
        Tool tool = tools.get(row.tool());
        double packWh = tool.family().equals(GeneratedEquipment.HAND) ? 275 : 918;
        double average = tool.averageWatts() * row.toolHours();
        return 1.2 * average / packWh / seasons.get(row.season()).packCapacityFactor();
    }
}
