package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.Violation;
import depot.optimizer.rerun.RoutineKeeper.Kept;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.FleetAssembly;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Keeps the routine of a fleet in its first phase. Each depot keeps its own with as many packs on visits as the cheapest plan has. Then each home goes
 * back to the old days together with the hosts that its crews visit, where that is worth it and all of them still fit together.
 */
final class VisitRoutine {

    private final Scenario scenario;
    private final RoutineKeeper keeper;
    private final FleetAssembly assembly;
    private final Map<String, DepotPlan> earlier;

    /**
     * @param scenario in which all that is held is there
     * @param weightPerYear as in {@link RoutineKeeper}
     * @param earlier plans of the depots whose days may change
     */
    VisitRoutine(Scenario scenario, double weightPerYear, FleetAssembly assembly, Map<String, DepotPlan> earlier) {
        this.scenario = scenario;
        this.keeper = new RoutineKeeper(scenario, weightPerYear);
        this.assembly = assembly;
        this.earlier = earlier;
    }

    /**
     * What is kept in each of these depots.
     *
     * @param fleet the cheapest plan
     * @param found its plans by depot, phase by phase, with chargers named as before
     */
    Map<String, Kept> keep(Plan fleet, Map<String, List<DepotPlan>> found) {
        Map<String, Kept> kept = new LinkedHashMap<>();
        earlier.forEach(
                (depot, then) -> kept.put(depot, keeper.keep(found.get(depot).get(0), then)));
        for (String home : earlier.keySet()) {
            List<String> group = withHosts(home);
            if (group.size() > 1) {
                Map<String, Kept> tried = new LinkedHashMap<>(kept);
                group.forEach(depot ->
                        tried.put(depot, keeper.keepVisits(found.get(depot).get(0), earlier.get(depot))));
                if (weighed(tried, group) < weighed(kept, group) && fits(fleet, found, tried)) {
                    kept.putAll(tried);
                }
            }
        }
        return kept;
    }

    /** A home and the depots that its crews visit, of those whose days may change. */
    private List<String> withHosts(String home) {
        Stream<String> hosts = assembly.rollout(home).first().services().stream()
                .map(Service::visit)
                .map(visit -> visit.host());
        return Stream.concat(Stream.of(home), hosts)
                .distinct()
                .filter(earlier::containsKey)
                .toList();
    }

    private double weighed(Map<String, Kept> kept, List<String> group) {
        return group.stream()
                .mapToDouble(depot -> keeper.weighed(kept.get(depot).plan(), earlier.get(depot)))
                .sum();
    }

    /** Whether crews get all that they count on. */
    private boolean fits(Plan fleet, Map<String, List<DepotPlan>> found, Map<String, Kept> kept) {
        String first = fleet.phases().get(0);
        List<DepotPlan> plans = fleet.depots().stream()
                .map(plan -> !plan.phase().equals(first)
                        ? plan
                        : kept.containsKey(plan.depot())
                                ? kept.get(plan.depot()).plan()
                                : found.get(plan.depot()).get(0))
                .toList();
        return FleetReplay.runFleet(scenario, fleet.with(fleet.certificate(), fleet.fleetCosts(), plans)).stream()
                .noneMatch(violation -> violation.kind() == Violation.Kind.VISIT);
    }
}
