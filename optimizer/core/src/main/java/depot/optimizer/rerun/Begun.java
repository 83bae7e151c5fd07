package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.sweep.FleetAssembly;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** What a run has used of the budgets and delivery limits of the phase that has begun, at the prices that it paid. */
final class Begun {

    private static final Set<Kind> COUNTED = Set.of(Kind.BUDGET, Kind.REGION_BUDGET, Kind.DELIVERY);

    private Begun() {}

    /**
     * By name of the limit; nothing where the scenario begins with another phase than the one carried out last.
     *
     * @param standing what runs before that one left and the scenario does not list
     */
    static SortedMap<String, Double> of(EarlierRun run, Scenario scenario, Standing standing) {
        SortedMap<String, Double> used = new TreeMap<>();
        String first = scenario.coupling().phases().get(0).id();
        if (!first.equals(run.carriedOut())) {
            return used;
        }
        Map<String, List<DepotPlan>> plans = FleetAssembly.byDepot(run.plan());
        FleetAssembly problems = new FleetAssembly(run.scenario());
        for (SharedLimit limit : SharedLimits.of(scenario)) {
            if (COUNTED.contains(limit.kind()) && limit.phase().equals(first)) {
                double sum = standing.begun().getOrDefault(limit.name(), 0.0)
                        + FleetAssembly.ofFleet(limit, run.plan().fleetCosts());
                for (Depot depot : run.scenario().depots()) {
                    boolean concerned = limit.kind() != Kind.REGION_BUDGET
                            || depot.region().filter(limit.subject()::equals).isPresent();
                    if (concerned && plans.containsKey(depot.id())) {
                        DepotRollout rollout =
                                new DepotRollout(problems.rollout(depot.id()).phases(), List.of(limit));
                        sum += RolloutPlan.of(rollout, plans.get(depot.id()))
                                .use()
                                .get(limit);
                    }
                }
                used.put(limit.name(), sum);
            }
        }
        used.values().removeIf(sum -> sum == 0);
        return used;
    }
}
