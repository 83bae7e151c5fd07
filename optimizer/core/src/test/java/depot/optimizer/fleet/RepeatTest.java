package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.PlanJson;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The same fleet gives the same bytes, however many threads work on it. */
class RepeatTest {

    private static final double SUM = 1e-9;

    /** Cuts are slack by a millionth. */
    private static final double GAP = 2e-6;

    private static Scenario fleet(int threads) {
        ScenarioText text = SmallFleet.twice(SmallFleet.seasons());
        Scenario scenario = Planned.load(text);
        SolveSettings s = scenario.solve();
        return scenario.withSolve(new SolveSettings(
                s.relativeGap(), s.nodeLimit(), s.timeLimitSeconds(), threads, s.seed(), s.handoverMinutes()));
    }

    private static Plan plan(int threads) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(fleet(threads), new TreeMap<>(Map.of("depots.csv", "00")))
                .plan();
    }

    @Test
    void twoRunsGiveTheSameBytes() {
        assertThat(PlanJson.write(plan(1))).isEqualTo(PlanJson.write(plan(1)));
    }

    @Test
    void threadsMakeNoDifferenceToTheDepots() {
        Plan one = plan(1);
        Plan two = plan(2);

        assertThat(PlanJson.write(withDepotsOnly(two))).isEqualTo(PlanJson.write(withDepotsOnly(one)));
    }

    /** The number of threads is itself written down among the settings. */
    private static Plan withDepotsOnly(Plan plan) {
        return new Plan(
                plan.formatVersion(),
                plan.scenario(),
                plan.currency(),
                plan.inputHashes(),
                plan.solver(),
                null,
                plan.certificate(),
                plan.depots());
    }

    @Test
    void theFleetCostsWhatItsDepotsCostTogether() {
        Plan plan = plan(2);
        double lines = plan.depots().stream()
                .flatMap(depot -> depot.costs().stream())
                .mapToDouble(CostLine::presentCost)
                .sum();

        assertThat(plan.certificate().cost()).isCloseTo(lines, within(SUM * lines));
        assertThat(plan.certificate().gap()).isLessThan(GAP);
        assertThat(plan.certificate().bound())
                .isLessThanOrEqualTo(plan.certificate().cost());
        assertThat(plan.inputHashes()).containsEntry("depots.csv", "00");
    }

    @Test
    void progressTellsOfEveryDepotOnce() {
        List<String> told = new ArrayList<>();
        new FleetPlanner((depot, done, total, certificate) -> told.add(done + "/" + total + " " + depot))
                .plan(fleet(1), new TreeMap<>());

        assertThat(told).containsExactly("1/2 north", "2/2 south");
    }
}
