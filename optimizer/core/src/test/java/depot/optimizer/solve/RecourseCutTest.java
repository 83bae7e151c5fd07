package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.DepotModel;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A cut stays below what the day costs, whatever is bought. */
class RecourseCutTest {

    private static final int SEEDS = 8;
    private static final int POINTS = 4;
    private static final Limits EXACT = new Limits(0, 100_000, 60, 1);

    /** Rounding of the simplex, as the master allows for it, relative and absolute. */
    private static final double ROUNDING = 2e-6;

    @Test
    void cutsNeverExceedTheCostOfTheDay() {
        int compared = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            DepotProblem problem = Planned.of(TinyScenarios.random(seed)).problem();
            List<double[]> capacities = capacities(problem, new Random(seed));
            for (double[] at : capacities) {
                for (List<Double> prices : cyclePrices(problem)) {
                    RecourseCut cut = day(problem).cut(at, prices).orElseThrow();
                    for (double[] other : capacities) {
                        double cost = solved(problem, other, prices);
                        assertThat(value(cut, other))
                                .as("seed %d", seed)
                                .isLessThanOrEqualTo(cost + ROUNDING * (1 + cost));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(SEEDS * POINTS);
    }

    @Test
    void aCutTouchesTheRelaxedCostWhereItWasMade() {
        DepotProblem problem = Planned.of(TinyScenarios.random(3)).problem();
        double[] at = capacities(problem, new Random(3)).get(0);
        RecourseCut cut = day(problem).cut(at, cyclePrices(problem).get(0)).orElseThrow();

        assertThat(value(cut, at)).isEqualTo(cut.value());
    }

    private static DayProblem day(DepotProblem problem) {
        return new DayProblem(DepotRollout.of(problem), 0, 0, new DayTerms(Tightening.NONE, ShortagePolicy.ALLOW));
    }

    private static double solved(DepotProblem problem, double[] capacity, List<Double> prices) {
        DaySolution solution = day(problem).solve(capacity, prices, EXACT).orElseThrow();
        assertThat(solution.outcome().stop()).isEqualTo(Outcome.Stop.GAP_REACHED);
        return solution.outcome().objective();
    }

    private static List<List<Double>> cyclePrices(DepotProblem problem) {
        List<Double> full = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            full.add(DepotModel.costPerCycle(problem, p));
        }
        return List.of(Collections.nCopies(full.size(), 0.0), full);
    }

    private static double value(RecourseCut cut, double[] capacity) {
        double value = cut.value();
        for (int j = 0; j < capacity.length; j++) {
            value += cut.slopes()[j] * (capacity[j] - cut.at()[j]);
        }
        return value;
    }

    /** Small whole numbers for everything that may be bought, the day's limits kept by nothing else: no units, no upgrade. */
    private static List<double[]> capacities(DepotProblem problem, Random random) {
        List<double[]> points = new ArrayList<>();
        CapacityVars vars = DepotModel.addCapacity(new MipModel("names"), problem, Set.of());
        for (int i = 0; i < POINTS; i++) {
            points.add(vars.all().stream()
                    .mapToDouble(var -> {
                        if (var.name().startsWith("plain_")) {
                            return random.nextInt(2);
                        }
                        return var.name().startsWith("packs_") ? random.nextInt(5) : 0;
                    })
                    .toArray());
        }
        return points;
    }
}
