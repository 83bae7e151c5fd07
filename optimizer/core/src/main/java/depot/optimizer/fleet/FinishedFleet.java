package depot.optimizer.fleet;

import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RolloutPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes the fleet's plan of chosen columns: crews that work from another depot are no longer paid for at home. */
final class FinishedFleet {

    private FinishedFleet() {}

    static FleetPlan of(
            Scenario scenario, List<DepotRollout> rollouts, FleetMaster.Choice choice, double bound, BoundProof proof) {
        double gap = scenario.solve().relativeGap();
        double lowest = Math.min(bound, choice.cost());
        Map<String, Set<String>> guests = guests(choice.columns());
        List<ProvenDepot> depots = new ArrayList<>();
        for (int d = 0; d < rollouts.size(); d++) {
            ProvenDepot proven = choice.columns().get(d).proven();
            Map<String, Set<String>> away = away(scenario, rollouts.get(d), guests);
            if (away.values().stream().anyMatch(crews -> !crews.isEmpty())) {
                RolloutPlan plan = proven.rollout().withAway(rollouts.get(d), away);
                List<DepotReplay> replays = FleetReplay.runPhases(scenario, plan.phases());
                proven = new ProvenDepot(plan, replays, proven.bound());
            }
            depots.add(proven.certified(choice.cost(), lowest, gap));
        }
        return new FleetPlan(Certificate.of(choice.cost(), lowest, gap), choice.fleetCosts(), proof, depots);
    }

    /** By phase the crews that work with packs from a depot that is not their own. */
    private static Map<String, Set<String>> guests(List<FleetColumn> columns) {
        Map<String, Set<String>> guests = new HashMap<>();
        for (FleetColumn column : columns) {
            for (DepotPlan plan : column.proven().rollout().phases()) {
                guests.computeIfAbsent(plan.phase(), phase -> new HashSet<>()).addAll(plan.guests());
            }
        }
        return guests;
    }

    private static Map<String, Set<String>> away(
            Scenario scenario, DepotRollout rollout, Map<String, Set<String>> guests) {
        Map<String, Set<String>> away = new HashMap<>();
        for (Crew crew : scenario.crews()) {
            if (crew.depot().equals(rollout.depot().id())) {
                guests.forEach((phase, crews) -> {
                    if (crews.contains(crew.id())) {
                        away.computeIfAbsent(phase, p -> new HashSet<>()).add(crew.id());
                    }
                });
            }
        }
        return away;
    }
}
