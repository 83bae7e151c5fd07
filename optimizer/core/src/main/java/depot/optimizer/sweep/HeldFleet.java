package depot.optimizer.sweep;

import depot.optimizer.fleet.HeldRollout;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotRollout;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Keeps what a fleet's plan buys in all phases, and plans the days anew. */
final class HeldFleet {
    private HeldFleet() {}

    /**
     * The outcome. It has a cost and no bound.
     *
     * @param touched depots whose days are planned anew; the others' stay as they are
     * @throws depot.optimizer.solve.NoPlanException when a day has no plan within the limits
     */
    static FleetOutcome of(FleetJob job, FleetOutcome base, List<String> touched) {
        Map<String, List<DepotPlan>> held = new HashMap<>();
        for (DepotRollout rollout : job.rollouts()) {
            String depot = rollout.depot().id();
            if (touched.contains(depot)) {
                held.put(depot, HeldRollout.replan(job.scenario(), rollout, base.of(depot)));
            }
        }
        List<String> phases = base.plan().phases();
        List<DepotPlan> depots = base.plan().depots().stream()
                .map(plan -> held.containsKey(plan.depot())
                        ? held.get(plan.depot()).get(phases.indexOf(plan.phase()))
                        : plan)
                .toList();
        Plan plan = RepricedFleet.of(job, base.plan(), depots);
        return FleetOutcome.replayed(job.scenario(), plan);
    }
}
