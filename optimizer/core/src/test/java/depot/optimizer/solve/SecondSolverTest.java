package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Outcome.Stop;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/** Whole models solved to the end by two engines that share no code, and by the depot solver that takes them apart. */
class SecondSolverTest {

    /** 1e-6 of the cost: what engines leave open at gap 0. */
    private static final Percentage SAME = Percentage.withPercentage(1e-4);

    private static final double ALLOWED = 1e-6;
    private static final int SEEDS = 20;
    /** Seeds that take longer are left out. */
    private static final Limits SHORT = new Limits(0, 100_000, 1, 1);

    private static final SolveSettings EXACT = new SolveSettings(0, 100_000, 30, 1, 1, 15);
    /** So many seeds have to be quick, or the test says little; all twenty were when this was written. */
    private static final int LEAST_COMPARED = 15;

    /** Of these, so many that the depot solver has to meet exactly. */
    private static final int LEAST_EXACT = 10;

    @Test
    void enginesAndDepotSolverAgree(TestReporter reporter) {
        SoftAssertions softly = new SoftAssertions();
        List<Integer> compared = new ArrayList<>();
        List<Integer> exact = new ArrayList<>();
        for (int seed = 1; seed <= SEEDS; seed++) {
            Scenario scenario = TinyScenarios.random(seed).withSolve(EXACT);
            MipModel model = ModelExport.model(scenario);
            Outcome first = Engine.BRANCH_AND_CUT.solve(model, SHORT);
            if (first.stop() == Stop.LIMIT_REACHED) {
                continue;
            }
            Outcome second = Engine.SECOND_BRANCH_AND_CUT.solve(model, SHORT);
            if (second.stop() == Stop.LIMIT_REACHED) {
                continue;
            }
            compared.add(seed);
            softly.assertThat(second.objective())
                    .as("second engine, seed %d", seed)
                    .isCloseTo(first.objective(), SAME);
            if (turnsPricedExactly(scenario)) {
                exact.add(seed);
                softly.assertThat(depotCosts(scenario))
                        .as("depot solver, seed %d", seed)
                        .isCloseTo(first.objective(), SAME);
            } else {
                softly.assertThat(depotCosts(scenario))
                        .as("depot solver against the model as a bound, seed %d", seed)
                        .isGreaterThanOrEqualTo(first.objective() * (1 - ALLOWED));
            }
        }
        softly.assertAll();
        assertThat(compared).as("seeds compared").hasSizeGreaterThanOrEqualTo(LEAST_COMPARED);
        assertThat(exact).as("seeds compared with the depot solver").hasSizeGreaterThanOrEqualTo(LEAST_EXACT);
        reporter.publishEntry("seeds compared", compared.toString());
        reporter.publishEntry("with the depot solver", exact.toString());
    }

    /**
     * Packs of two types in turn on one charger begin elsewhere than the model's turns, so that with a price that changes the plan's energy may
     * cost more than the model's.
     */
    private static boolean turnsPricedExactly(Scenario scenario) {
        return scenario.packTypes().size() == 1 || scenario.priceBands().size() == 1;
    }

    private static double depotCosts(Scenario scenario) {
        DepotProblems problems = new DepotProblems(scenario);
        double sum = 0;
        for (Depot depot : scenario.depots()) {
            sum += new DepotSolver(problems.of(depot))
                    .solve()
                    .stop()
                    .certificate()
                    .cost();
        }
        return sum;
    }
}
