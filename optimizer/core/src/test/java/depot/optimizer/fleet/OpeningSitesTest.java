package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.OpeningSites;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Opening sites and sending customers to them, through the real tables, against published optima. */
class OpeningSitesTest {

    private static final Path PUBLISHED = Path.of("../../../shared/published/single-source");

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

    /** With few sites that each customer could go to, prices alone do not say who goes where: the plan may leave some out, but the bound holds. */
    @Test
    void warehousesApartHaveABoundThatHolds() {
        Scenario scenario = Planned.load(OpeningSites.warehouses().text());
        FleetResult result = plan(scenario, Method.APART);

        assertThat(result.plan().certificate().bound()).isBetween(383 * 0.9, 383 + 0.01);
        assertThat(result.plan().certificate().cost()).isGreaterThan(383 - 0.01);
        assertThat(result.replay().violations()).isEmpty();
        assertThat(BoundCheck.of(scenario, result.plan()).faults()).isEmpty();
    }

    /** Holmberg, Ronnqvist and Yuan 1999; the optima are published with the problems (seen). */
    @ParameterizedTest
    @CsvSource({
        "p1, 8848", "p2, 7913", "p3, 9314", "p4, 10714", "p5, 8838", "p6, 7777",
        "p7, 9488", "p8, 11088", "p9, 8462", "p10, 7617", "p11, 8932", "p12, 10132"
    })
    void aSingleSourceProblemAsOneModelReachesThePublishedOptimum(String name, double optimum) throws IOException {
        Assumptions.assumeTrue(
                Files.exists(PUBLISHED.resolve(name)), "the published problems are not beside the project");
        FleetResult result =
                plan(Planned.load(OpeningSites.read(PUBLISHED.resolve(name)).text()), Method.WHOLE);

        assertThat(result.plan().certificate().cost()).isCloseTo(optimum, within(0.01));
        assertThat(result.plan().certificate().bound()).isCloseTo(optimum, within(0.01));
        assertThat(result.replay().violations()).isEmpty();
    }

    private static FleetResult plan(Scenario scenario, Method method) {
        return new FleetPlanner(ProgressListener.SILENT).plan(scenario, new TreeMap<>(), method);
    }
}
