package depot.optimizer.fleet;

import depot.optimizer.mip.Engine;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.solve.ShortageCure;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * The plans of all depots.
 *
 * @param depots in the order of the scenario
 */
record FleetPlan(Certificate certificate, List<FleetCost> fleetCosts, BoundProof proof, List<ProvenDepot> depots) {

    /** Of depots that share nothing: their costs and bounds add up. */
    static FleetPlan ofIndependent(List<ProvenDepot> depots, double gap) {
        double cost =
                depots.stream().mapToDouble(depot -> depot.rollout().cost()).sum();
        double bound = depots.stream().mapToDouble(ProvenDepot::bound).sum();
        return new FleetPlan(Certificate.of(cost, bound, gap), List.of(), BoundProof.NONE, depots);
    }

    /** The plan as it is written, with replays and explanations of shortages. */
    FleetResult result(Scenario scenario, SortedMap<String, String> inputHashes, List<DepotRollout> rollouts) {
        List<DepotPlan> plans = new ArrayList<>();
        List<DepotReplay> replays = new ArrayList<>();
        List<ExplainedShortage> shortages = new ArrayList<>();
        for (int f = 0; f < scenario.coupling().phases().size(); f++) {
            for (int d = 0; d < depots.size(); d++) {
                plans.add(depots.get(d).rollout().phases().get(f));
                replays.add(depots.get(d).replays().get(f));
                shortages.addAll(ShortageCure.explain(
                        rollouts.get(d).phases().get(f),
                        depots.get(d).rollout().phases().get(f)));
            }
        }
        SolveSettings solve = scenario.solve();
        Plan plan = new Plan(
                Plan.FORMAT_VERSION,
                scenario.name(),
                scenario.currency().getCurrencyCode(),
                inputHashes,
                Engine.libraryVersion(),
                new PlanSettings(
                        solve.relativeGap(), solve.nodeLimit(), solve.threads(), solve.seed(), solve.handoverMinutes()),
                certificate,
                fleetCosts,
                proof,
                List.copyOf(plans));
        return new FleetResult(
                plan,
                new ReplayReport(List.copyOf(replays), FleetReplay.runFleet(scenario, plan)),
                List.copyOf(shortages));
    }
}
