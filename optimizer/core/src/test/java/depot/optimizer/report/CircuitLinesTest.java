package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.ScenarioEdit;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.CircuitLine;
import depot.optimizer.report.table.CircuitLine.Work;
import depot.optimizer.report.table.CircuitLines;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The yard of {@link PlanFixture}: a plain circuit, one behind a unit that its plug holds to 10 A, one to be built. */
class CircuitLinesTest {

    private static final double CENT = 0.005;

    /**
     * Charging is continuous: 16 A x 0.8 = 12.8 A (NEC 210.20(A), seen). Two plates of 500 W / (230 V x 0.95) = 2.29 A are behind the unit, which may
     * draw what the other loads leave of that, and never more than its plug's 10 A.
     */
    @ParameterizedTest
    @CsvSource({"0, 10, 4.58, 8.22", "2.8, 10, 4.58, 5.42", "3, 9.8, 4.58, 5.22", "9, 3.8, 3.8, 0", "13, 0, 0, 0"})
    void aUnitIsSetLowerBesideOtherLoads(double otherLoads, double setting, double counted, double margin) {
        CircuitLine wall = lines(otherLoads).get(1);

        assertThat(wall.usableAmps()).isCloseTo(12.8, within(CENT));
        assertThat(wall.otherLoadsAmps()).isEqualTo(otherLoads);
        assertThat(wall.unit().orElseThrow().settingAmps()).isEqualTo(10);
        assertThat(wall.unit().orElseThrow().besideOtherLoadsAmps()).isCloseTo(setting, within(CENT));
        assertThat(wall.plateAmps()).isCloseTo(4.58, within(CENT));
        assertThat(wall.countedAmps()).isCloseTo(counted, within(CENT));
        assertThat(wall.marginAmps()).isCloseTo(margin, within(CENT));
    }

    /** By hand: 2.288 A x 3 chargers and 600 W / (230 V x 0.95) = 2.746 A, 9.61 A at 230 V, are 3.19 A at 400 V on three phases. */
    @Test
    void theSupplyHasAllOfTheirVoltAmperes() {
        List<CircuitLine> lines = lines(2);
        CircuitLine supply = lines.get(lines.size() - 1);

        assertThat(supply.supply()).isTrue();
        assertThat(supply.usableAmps()).isEqualTo(32);
        assertThat(supply.plateAmps()).isCloseTo(3.19, within(CENT));
        assertThat(supply.otherLoadsAmps()).isCloseTo(2 * 230 / (400 * Math.sqrt(3)), within(CENT));
    }

    @Test
    void circuitsToBuildAreMarkedAndThoseNotBuiltLeftOut() {
        assertThat(lines(0)).extracting(CircuitLine::name).containsExactly("bench", "wall", "annexe", "supply");
        assertThat(lines(0))
                .extracting(CircuitLine::work)
                .containsExactly(Work.EXISTING, Work.EXISTING, Work.NEW_CIRCUIT, Work.EXISTING);
    }

    private static List<CircuitLine> lines(double otherLoadsAmps) {
        Scenario base = ScenarioFixture.friendly();
        List<Circuit> circuits = new ArrayList<>(base.circuits());
        circuits.add(new Circuit("loft", "yard", 230, 1, 16, 4, OptionalDouble.empty(), 0.8, 1, new BigDecimal("300")));
        Scenario scenario = new ScenarioEdit(base)
                .circuits(circuits)
                .baseLoads(List.of(
                        new BaseLoad("yard", Optional.of("wall"), Set.of(DayOfWeek.MONDAY), 600, 720, otherLoadsAmps)))
                .scenario();
        Plan plan = PlanFixture.of(scenario);
        return CircuitLines.of(
                new Catalog(scenario),
                plan.depots().get(0),
                ReplayFixture.of(plan).depots().get(0));
    }
}
