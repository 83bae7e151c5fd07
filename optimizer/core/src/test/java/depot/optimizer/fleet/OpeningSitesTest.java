package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.OpeningSites;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Opening sites and sending customers to them, through the real tables, against published optima. */
class OpeningSitesTest {

    private static final Path PUBLISHED = Path.of("../../../shared/published/single-source");

    /** Share of the optimum by which a plan by prices may be dearer. */
    private static final double BY_PRICES = 0.005;

    /** CSPLib problem 034, seen and recomputed: 383, the fourth site stays closed. */
    @Test
    void warehousesAsOneModelReachThePublishedOptimum() {
        FleetResult result = plan(Planned.load(OpeningSites.warehouses().text()), Method.WHOLE);

        assertThat(result.plan().certificate().cost()).isCloseTo(383, within(0.01));
        assertThat(result.plan().certificate().bound()).isCloseTo(383, within(0.01));
        assertThat(result.replay().violations()).isEmpty();
        assertThat(result.replay().proven()).isTrue();
        assertThat(result.plan().depots().get(3).circuitsBuilt()).isEmpty();
    }

    /** Prices alone do not say who goes where; all sites planned together do. */
    @Test
    void warehousesByPricesReachThePublishedOptimum() {
        Scenario scenario = Planned.load(OpeningSites.warehouses().text());
        FleetResult result = plan(scenario, Method.APART);

        assertThat(result.plan().certificate().cost()).isCloseTo(383, within(0.01));
        assertThat(result.plan().certificate().bound()).isCloseTo(383, within(0.01));
        assertThat(result.replay().violations()).isEmpty();
        assertThat(result.replay().proven()).isTrue();
        assertThat(BoundCheck.of(scenario, result.plan()).faults()).isEmpty();
    }

    /**
     * Pairs, and then more, of the sites planned together beside the others, without ever all of them, as in a fleet that is too big for one model: from
     * any plan that keeps the limits they find the optimum, and claim no bound.
     */
    @Test
    void warehousesInGroupsReachThePublishedOptimum() {
        Scenario scenario = Planned.load(OpeningSites.warehouses().text());
        DepotProblems problems = new DepotProblems(scenario);
        List<DepotRollout> rollouts =
                scenario.depots().stream().map(problems::rollout).toList();
        FleetPlan plan = new SharedFleet(
                        scenario,
                        rollouts,
                        ProgressListener.SILENT,
                        RunControl.NONE,
                        GroupSteps.NEVER_AS_ONE,
                        Optional.empty(),
                        Touched.LEFT_OUT)
                .solve();

        assertThat(plan.certificate().cost()).isCloseTo(383, within(0.01));
        assertThat(plan.certificate().bound()).isLessThanOrEqualTo(383 + 0.01);
        assertThat(plan.depots()).allMatch(ProvenDepot::replayed);
        assertThat(plan.proof().given()).isTrue();
    }

    /** Holmberg, Ronnqvist and Yuan 1999; the optima are published with the problems (seen). */
    @ParameterizedTest
    @CsvSource({
        "p1, 8848", "p2, 7913", "p3, 9314", "p4, 10714", "p5, 8838", "p6, 7777",
        "p7, 9488", "p8, 11088", "p9, 8462", "p10, 7617", "p11, 8932", "p12, 10132"
    })
    void aSingleSourceProblemAsOneModelReachesThePublishedOptimum(String name, double optimum) throws IOException {
        FleetResult result = plan(published(name), Method.WHOLE);

        assertThat(result.plan().certificate().cost()).isCloseTo(optimum, within(0.01));
        assertThat(result.plan().certificate().bound()).isCloseTo(optimum, within(0.01));
        assertThat(result.replay().violations()).isEmpty();
    }

    /** The same by prices; {@code -Dsites} takes all of them and not only the quick ones. */
    @ParameterizedTest
    @CsvSource({
        "p1, 8848, quick", "p2, 7913, slow", "p3, 9314, slow", "p4, 10714, slow", "p5, 8838, slow", "p6, 7777, quick",
        "p7, 9488, slow", "p8, 11088, slow", "p9, 8462, slow", "p10, 7617, slow", "p11, 8932, slow", "p12, 10132, quick"
    })
    void aSingleSourceProblemByPricesReachesThePublishedOptimum(String name, double optimum, String speed)
            throws IOException {
        Assumptions.assumeTrue(
                speed.equals("quick") || System.getProperty("sites") != null, "takes long: asked for by -Dsites");
        Scenario scenario = published(name);
        FleetResult result = plan(scenario, Method.APART);

        assertThat(result.plan().certificate().cost()).isBetween(optimum - 0.01, optimum * (1 + BY_PRICES));
        assertThat(result.plan().certificate().bound()).isLessThanOrEqualTo(optimum + 0.01);
        assertThat(result.replay().violations()).isEmpty();
        assertThat(result.replay().proven()).isTrue();
        assertThat(BoundCheck.of(scenario, result.plan()).faults()).isEmpty();
    }

    private static Scenario published(String name) throws IOException {
        Assumptions.assumeTrue(
                Files.exists(PUBLISHED.resolve(name)), "the published problems are not beside the project");
        return Planned.load(OpeningSites.read(PUBLISHED.resolve(name)).text());
    }

    private static FleetResult plan(Scenario scenario, Method method) {
        return new FleetPlanner(ProgressListener.SILENT).plan(scenario, new TreeMap<>(), method);
    }
}
