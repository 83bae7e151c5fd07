package depot.optimizer.fleet;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.Effort;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.List;
import java.util.Map;

/**
 * Plans a single depot over all phases while what the other depots use is settled, as the fleet's planner does, and replays the plan.
 *
 * @param phases its plan in each phase
 * @param bound no plans of the depot within the ranges cost less, prices of shared limits included
 */
public record VariedRollout(List<DepotPlan> phases, double bound) {

    /**
     * The plans with their bound.
     *
     * @param scenario whose rules the replay checks
     * @param rollout of one of its depots, which may ask for more than the scenario does
     * @param prices of shared limits, which the plans pay beside their own cost
     * @param ranges how much of some shared limits they may use
     * @throws depot.optimizer.solve.NoPlanException if no plan is found within the limits
     */
    public static VariedRollout plan(
            Scenario scenario, DepotRollout rollout, SharedPrices prices, Map<SharedLimit, UseRange> ranges) {
        DepotSolver solver = new DepotSolver(rollout, prices, 0).within(prices, 0, ranges);
        ProvenDepot proven = ProvenDepot.replayed(scenario, rollout, prices, solver, solver.solveRollout(Effort.ALL));
        double cost = proven.cost(prices);
        // A schedule may measure cheaper than the model takes it to be: then that is all that is known.
        return new VariedRollout(proven.rollout().phases(), Math.min(cost, proven.bound()));
    }
}
