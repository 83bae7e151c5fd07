package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import depot.optimizer.fixture.Glpsol;
import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.ModelFormat;
import depot.optimizer.mip.Outcome;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole model of a tiny depot has the same optimum for every solver, and the plan costs just that. */
class WholeModelTest {

    private static final Limits EXACT = new Limits(0, 1_000_000, 60, 1);

    /** Relative. */
    private static final double SAME_COST = 1e-6;

    private static final int SEEDS = 20;
    private static final double POINT = 1e-5;

    private static Outcome solve(Engine engine, Scenario scenario) {
        MipModel model = ModelExport.model(scenario);
        Outcome outcome = engine.solve(model, EXACT);
        assertThat(outcome.stop()).isEqualTo(Outcome.Stop.GAP_REACHED);
        assertThat(model.violations(outcome.point(), POINT)).isEmpty();
        return outcome;
    }

    @Test
    void aSecondBranchAndCutFindsTheSameOptimum() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            Scenario scenario = TinyScenarios.random(seed);
            double first = solve(Engine.BRANCH_AND_CUT, scenario).objective();

            assertThat(solve(Engine.SECOND_BRANCH_AND_CUT, scenario).objective())
                    .as("seed %d", seed)
                    .isCloseTo(first, within(SAME_COST * first));
        }
    }

    @Test
    void thePlansCostLinesAddUpToTheModelsOptimum() {
        for (long seed = 1; seed <= 3 * SEEDS; seed++) {
            if (!turnsOfTwoLengthsAtTwoPrices(TinyScenarios.random(seed))) {
                assertPlanCostsTheOptimum(seed);
            }
        }
    }

    /** The model takes such turns at the least they can cost, so that the plan may cost more than the optimum but never less. */
    @ParameterizedTest
    @ValueSource(longs = {7, 10, 28})
    void turnsOfTwoLengthsKeepABoundBelowTheCost(long seed) {
        Scenario scenario = TinyScenarios.random(seed);
        double optimum = solve(Engine.BRANCH_AND_CUT, scenario).objective();
        Planned planned = Planned.of(scenario);

        assertThat(planned.cost()).isGreaterThanOrEqualTo(optimum * (1 - SAME_COST));
        assertThat(planned.plan().stop().certificate().bound()).isLessThanOrEqualTo(optimum * (1 + SAME_COST));
    }

    private static boolean turnsOfTwoLengthsAtTwoPrices(Scenario scenario) {
        return scenario.packTypes().size() > 1 && scenario.priceBands().size() > 1;
    }

    private static void assertPlanCostsTheOptimum(long seed) {
        Scenario scenario = TinyScenarios.random(seed);
        double optimum = solve(Engine.BRANCH_AND_CUT, scenario).objective();
        Planned planned = Planned.of(scenario);

        assertThat(planned.cost()).as("seed %d", seed).isCloseTo(optimum, within(SAME_COST * optimum));
        assertThat(planned.plan().stop().certificate().bound())
                .as("bound of seed %d", seed)
                .isCloseTo(optimum, within(SAME_COST * optimum));
    }

    @ParameterizedTest
    @EnumSource
    void anotherProgramReadsTheExportedTextAndAgrees(ModelFormat format, @TempDir Path folder)
            throws IOException, InterruptedException {
        assumeTrue(Glpsol.installed(), "glpsol is not installed");
        for (long seed = 1; seed <= SEEDS; seed++) {
            Scenario scenario = TinyScenarios.random(seed);
            Path file = folder.resolve("model");
            ModelExport.write(scenario, file, format);
            double optimum = solve(Engine.BRANCH_AND_CUT, scenario).objective();

            assertThat(Glpsol.optimum(file, format))
                    .as("seed %d", seed)
                    .isCloseTo(optimum, within(SAME_COST * optimum));
        }
    }
}
