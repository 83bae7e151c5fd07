package depot.optimizer.sweep;

import depot.optimizer.fleet.HeldRollout;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.VisitUse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps what a fleet's plan buys in all phases, and plans the days anew. Visits are for as many packs as in that plan; a host that has no plan with that
 * gives its guests nothing, and days of their homes are planned anew as well.
 */
final class HeldFleet {

    private final FleetJob job;
    private final FleetOutcome base;
    private final Map<String, List<DepotPlan>> held = new HashMap<>();

    private HeldFleet(FleetJob job, FleetOutcome base) {
        this.job = job;
        this.base = base;
    }

    /**
     * The outcome. It has a cost and no bound.
     *
     * @param touched depots whose days are planned anew; the others' stay as they are
     * @throws NoPlanException when a day has no plan within the limits
     */
    static FleetOutcome of(FleetJob job, FleetOutcome base, List<String> touched) {
        HeldFleet fleet = new HeldFleet(job, base);
        for (DepotRollout rollout : job.rollouts()) {
            if (touched.contains(rollout.depot().id())) {
                fleet.hold(rollout);
            }
        }
        fleet.sendHome();
        List<String> phases = base.plan().phases();
        List<DepotPlan> depots = base.plan().depots().stream()
                .map(plan -> fleet.plans(plan.depot()).get(phases.indexOf(plan.phase())))
                .toList();
        Plan plan = RepricedFleet.of(job, base.plan(), depots);
        return FleetOutcome.replayed(job.scenario(), plan);
    }

    private List<DepotPlan> plans(String depot) {
        return held.getOrDefault(depot, base.of(depot));
    }

    private void hold(DepotRollout rollout) {
        List<Map<String, Integer>> counted = new ArrayList<>();
        List<Map<String, Integer>> all = new ArrayList<>();
        for (int f = 0; f < rollout.phases().size(); f++) {
            DepotPlan plan = base.of(rollout.depot().id()).get(f);
            counted.add(VisitUse.countedOn(rollout.phases().get(f), plan));
            all.add(VisitUse.packs(rollout.phases().get(f), plan));
        }
        try {
            hold(rollout, all);
        } catch (NoPlanException none) {
            if (all.equals(counted)) {
                throw none;
            }
            hold(rollout, counted);
        }
    }

    private void hold(DepotRollout rollout, List<Map<String, Integer>> visits) {
        String depot = rollout.depot().id();
        held.put(depot, HeldRollout.replan(job.scenario(), rollout, base.of(depot), visits));
    }

    /** Plans the days of homes with what their crews still get, where that is less than they count on. */
    private void sendHome() {
        List<Map<String, Integer>> given = new ArrayList<>();
        for (int f = 0; f < base.plan().phases().size(); f++) {
            Map<String, Integer> ofPhase = new LinkedHashMap<>();
            for (DepotRollout host : job.rollouts()) {
                ofPhase.putAll(VisitUse.given(
                        host.phases().get(f), plans(host.depot().id()).get(f)));
            }
            given.add(ofPhase);
        }
        for (DepotRollout home : job.rollouts()) {
            boolean less = false;
            List<Map<String, Integer>> left = new ArrayList<>();
            for (int f = 0; f < home.phases().size(); f++) {
                DepotProblem problem = home.phases().get(f);
                DepotPlan plan = plans(home.depot().id()).get(f);
                Map<String, Integer> packs = VisitUse.packs(problem, plan);
                Map<String, Integer> capped = new LinkedHashMap<>(packs);
                for (String service : VisitUse.countedOn(problem, plan).keySet()) {
                    capped.merge(service, given.get(f).getOrDefault(service, 0), Math::min);
                }
                less |= !capped.equals(packs);
                left.add(capped);
            }
            if (less) {
                hold(home, left);
            }
        }
    }
}
