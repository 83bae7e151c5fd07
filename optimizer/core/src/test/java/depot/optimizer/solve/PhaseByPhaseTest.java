package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.generate.CouplingSettings;
import depot.optimizer.generate.CouplingSettings.Kind;
import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rollouts of so many days that their phases are looked at one by one, against the model of all phases. */
class PhaseByPhaseTest {

    private static final double ROUNDING = 1e-6;

    /** Further than that above the best plan of the whole model no plan was seen; its own gap is a tenth of it. */
    private static final double MOST_OPEN = 0.01;

    private static DepotRollout rollout(long seed) {
        return rollout(new GeneratorSettings(1, 2, 2, 2, 1, 4, 3), seed);
    }

    private static DepotRollout rollout(GeneratorSettings size, long seed) {
        Scenario scenario = FleetGenerator.generate(
                size, new CouplingSettings(3, OptionalDouble.of(0.2), Set.of(Kind.OPTIONAL)), seed);
        return new DepotProblems(scenario).rollout(scenario.depots().get(0));
    }

    private static SharedPrices prices(DepotRollout rollout, double price) {
        Map<SharedLimit, Double> prices = new LinkedHashMap<>();
        rollout.limits().forEach(limit -> prices.put(limit, price));
        return new SharedPrices(prices);
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "2, 0.3", "3, 1"})
    void theBoundIsAboveTheRelaxationAndBelowThePlan(long seed, double price) {
        DepotRollout rollout = rollout(seed);
        SharedPrices prices = prices(rollout, price);
        DepotSolver solver = new DepotSolver(rollout, prices, 0);
        double linear = solver.linear().bound();

        RolloutPlan plan = solver.solveRollout(Effort.FIRST);

        Outcome whole = whole(rollout, prices);
        double cost = plan.cost() + prices.of(plan.use());
        assertThat(solver.bound()).isBetween(linear, whole.objective() * (1 + ROUNDING));
        assertThat(cost).isBetween(whole.bound() * (1 - ROUNDING), whole.objective() * (1 + MOST_OPEN));
    }

    @Test
    void fewDaysAreLookedAtTogether() {
        DepotRollout few = rollout(new GeneratorSettings(1, 2, 2, 2, 1, 2, 3), 1);

        assertThat(task(few, SharedPrices.NONE).byPhase()).isFalse();
        assertThat(task(rollout(1), SharedPrices.NONE).byPhase()).isTrue();
    }

    private static SearchTask task(DepotRollout rollout, SharedPrices prices) {
        DayTerms terms = new DayTerms(Tightening.NONE, ShortagePolicy.REFUSE);
        return new SearchTask(
                rollout,
                prices,
                0,
                Map.of(),
                Collections.nCopies(rollout.days().size(), terms),
                ShortagePolicy.REFUSE,
                0);
    }

    private static Outcome whole(DepotRollout rollout, SharedPrices prices) {
        TreeSet<Integer> all = new TreeSet<>();
        for (int d = 0; d < rollout.days().size(); d++) {
            all.add(d);
        }
        SearchTask task = task(rollout, prices);
        return task.master(all, new CutPool()).solve(Stage.EXACT, task.limits(0.001, 2_000));
    }
}
