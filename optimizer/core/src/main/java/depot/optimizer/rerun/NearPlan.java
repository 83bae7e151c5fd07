package depot.optimizer.rerun;

import depot.optimizer.fleet.VariedRollout;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.sweep.FleetAssembly;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan as near to the earlier one as it can be: depots that no change touches go on as they were, and the others are planned one after the other with
 * what those leave of everything that they share.
 */
final class NearPlan {

    private NearPlan() {}

    /**
     * The plan; empty: a depot has none within what is left.
     *
     * @param kept depots that go on as they were, with their plans
     * @param like says what goes into a plan beside depots and costs
     * @param bound no plan of the fleet costs less
     */
    static Optional<Plan> of(
            Scenario scenario, FleetAssembly assembly, Map<String, List<DepotPlan>> kept, Plan like, double bound) {
        Map<String, List<DepotPlan>> plans = new LinkedHashMap<>(kept);
        List<String> touched =
                new ArrayList<>(scenario.depots().stream().map(Depot::id).toList());
        touched.removeAll(kept.keySet());
        try {
            for (String depot : touched) {
                plans.put(
                        depot,
                        VariedRollout.plan(
                                        scenario,
                                        assembly.rollout(depot),
                                        SharedPrices.NONE,
                                        assembly.left(depot, plans, List.of()))
                                .phases());
            }
        } catch (NoPlanException none) {
            return Optional.empty();
        }
        return Optional.of(assembly.plan(like, plans, bound));
    }
}
