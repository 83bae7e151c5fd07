package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.RegionBudget;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of the tables that couple depots. */
class CouplingTest {
    @TempDir
    private Path folder;

    @Test
    void withoutTheTablesNothingCouplesTheDepots() {
        Scenario scenario = loaded(tiny());
        assertThat(scenario.coupling()).isEqualTo(Coupling.NONE);
        assertThat(scenario.coupling().phases()).containsExactly(new Phase("now", 0, Optional.empty()));
        assertThat(scenario.coupling().conversionOf("crew-1"))
                .isEqualTo(new CrewConversion("crew-1", "now", Optional.of("now")));
        assertThat(scenario.visits()).isEmpty();
    }

    @Test
    void aTableWithoutRowsSaysNothing() {
        assertThat(loaded(tiny().table("phases.csv", "phase,year\n")).coupling())
                .isEqualTo(Coupling.NONE);
    }

    @Test
    void phasesBudgetsAndConversionsAreTaken() {
        Coupling coupling = loaded(tiny().table("phases.csv", "phase,year,budget\nfirst,0,1000.50\nsecond,2,\n")
                        .column("depots.csv", "region", "Upland")
                        .table("region_budgets.csv", "phase,region,budget\nsecond,Upland,700\n")
                        .column("crews.csv", "petrol_cost_per_year", "900")
                        .rows("crews.csv", "crew-2,north,8,60,900")
                        .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-1,,\n"))
                .coupling();
        assertThat(coupling.phases())
                .containsExactly(
                        new Phase("first", 0, Optional.of(new BigDecimal("1000.50"))),
                        new Phase("second", 2, Optional.empty()));
        assertThat(coupling.regionBudgets())
                .containsExactly(new RegionBudget("second", "Upland", new BigDecimal("700")));
        assertThat(coupling.conversionOf("crew-1")).isEqualTo(new CrewConversion("crew-1", "first", Optional.empty()));
        assertThat(coupling.conversionOf("crew-2"))
                .isEqualTo(new CrewConversion("crew-2", "first", Optional.of("first")));
    }

    @Test
    void basesAndVisitsAreFound() {
        Scenario scenario = loaded(two());
        assertThat(scenario.basesOf(scenario.crews().get(0))).containsExactly("north");
        assertThat(scenario.basesOf(scenario.crews().get(1))).containsExactly("south", "north");
        assertThat(scenario.visits())
                .singleElement()
                .satisfies(stop -> assertThat(stop.crew()).isEqualTo("crew-2"))
                .extracting(RouteStop::stop, RouteStop::place)
                .containsExactly(3, "north");
    }

    /** A second depot, south, whose crew has lunch in the depot north and could work from there. */
    private static ScenarioText two() {
        return tiny().rows("depots.csv", "south,South yard,flat,400,3,63,10")
                .rows("circuits.csv", "south-1,south,230,1,16,4")
                .rows("crews.csv", "crew-2,south,8,60")
                .rows(
                        "stops.csv",
                        "summer,Mon,crew-2,1,south,,07:00",
                        "summer,Mon,crew-2,2,park,08:00,11:00",
                        "summer,Mon,crew-2,3,north,12:00,13:00",
                        "summer,Mon,crew-2,4,south,16:00,")
                .table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-2,north,300\ncrew-2,south,100\n");
    }

    private Scenario loaded(ScenarioText text) {
        return ScenarioLoader.load(text.write(folder)).scenario().orElseThrow();
    }
}
