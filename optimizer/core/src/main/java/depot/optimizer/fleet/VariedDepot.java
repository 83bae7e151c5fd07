package depot.optimizer.fleet;

import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.Scenario;

/** Plans a single depot whose problem is not quite the one that its scenario gives, as the fleet's planner does, and replays the plan. */
public final class VariedDepot {
    private VariedDepot() {}

    /**
     * The plan with its bound, and its replay.
     *
     * @param scenario whose rules the replay checks
     * @param problem of one of its depots, which may ask for more than the scenario does
     * @throws depot.optimizer.solve.NoPlanException if no plan is found within the limits
     */
    public static DepotResult plan(Scenario scenario, DepotProblem problem) {
        ProvenDepot proven = OpenDepot.alone(scenario, DepotRollout.of(problem), AnswerStore.NONE)
                .closed()
                .certified(scenario);
        return new DepotResult(proven.plan(), proven.replay());
    }
}
