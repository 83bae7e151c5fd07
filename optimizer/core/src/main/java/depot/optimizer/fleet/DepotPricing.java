package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.LinearPoint;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/**
 * Answers of the depots to prices of shared limits, several depots at a time. An answer depends on nothing but the depot and the prices, so that a run
 * that is taken up again finds the same ones.
 */
final class DepotPricing implements AutoCloseable {

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final List<DepotSolver> solvers = new ArrayList<>();
    private final ExecutorService threads;

    /**
     * @param first prices of the first relaxations
     */
    DepotPricing(Scenario scenario, List<DepotRollout> rollouts, SharedPrices first) {
        this.scenario = scenario;
        this.rollouts = rollouts;
        threads = Executors.newFixedThreadPool(scenario.solve().threads());
        for (int d = 0; d < rollouts.size(); d++) {
            solvers.add(new DepotSolver(rollouts.get(d), of(d, first), 0));
        }
    }

    /** Linear relaxations at the first prices; what they learn of the days serves all later answers. */
    List<LinearPoint> first() {
        return all(d -> solvers.get(d).linear());
    }

    /** Linear relaxations. */
    List<LinearPoint> linear(SharedPrices prices) {
        return all(d -> solvers.get(d).repriced(of(d, prices), 0).linear());
    }

    /** Plans, replayed, with their bounds. */
    List<ProvenDepot> plans(SharedPrices prices, double allowed) {
        return all(
                d -> ProvenDepot.solve(scenario, rollouts.get(d), solvers.get(d).repriced(of(d, prices), allowed)));
    }

    /**
     * Plans when it is settled where crews with other bases work. They have no bound.
     *
     * @param crews for each depot of the crews that could work from it whether they do
     */
    List<ProvenDepot> settled(SharedPrices prices, double allowed, List<Map<SharedLimit, Boolean>> crews) {
        return all(d -> ProvenDepot.solve(
                scenario, rollouts.get(d), solvers.get(d).settled(of(d, prices), allowed, crews.get(d))));
    }

    /** The prices that concern a depot. */
    private SharedPrices of(int depot, SharedPrices prices) {
        Map<SharedLimit, Double> own = new LinkedHashMap<>();
        rollouts.get(depot).limits().forEach(limit -> own.put(limit, prices.of(limit)));
        return new SharedPrices(own);
    }

    private <T> List<T> all(IntFunction<T> answer) {
        List<Future<T>> futures = new ArrayList<>();
        for (int d = 0; d < rollouts.size(); d++) {
            int depot = d;
            futures.add(threads.submit(() -> answer.apply(depot)));
        }
        List<T> answers = new ArrayList<>();
        for (Future<T> future : futures) {
            answers.add(Awaited.result(future, "interrupted before the fleet had a plan"));
        }
        return answers;
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
