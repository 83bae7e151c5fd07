package depot.optimizer.sweep;

import depot.optimizer.fleet.VariedRollout;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One depot of a fleet to be planned anew and replayed, in a single phase, when it is settled what it uses of all that is shared.
 *
 * @param scenario with all depots
 * @param ranges for every limit that concerns the depot
 */
record SettledJob(Scenario scenario, DepotRollout rollout, Map<SharedLimit, UseRange> ranges) {

    /** The same for jobs that come to the same plan, in every run of the same program. */
    String key() {
        return JobKey.of("settled", rollout.toString(), ranges.toString());
    }

    /**
     * Plans and replays, or takes the plan that was kept and replays it.
     *
     * @throws depot.optimizer.solve.NoPlanException if there is no plan within the limits
     */
    DepotOutcome run(CaseStore store) {
        String key = key();
        Optional<DepotPlan> kept =
                store.find(key).flatMap(plan -> plan.depots().stream().findFirst());
        if (kept.isPresent()) {
            return replayed(kept.get());
        }
        VariedRollout found = VariedRollout.plan(scenario, rollout, SharedPrices.NONE, ranges);
        DepotPlan plan = found.phases().get(0);
        double cost = plan.stop().certificate().cost();
        Certificate certificate =
                Certificate.of(cost, found.bound(), scenario.solve().relativeGap());
        DepotOutcome outcome = replayed(plan.withStop(plan.stop().withCertificate(certificate)));
        store.keep(key, FleetOutcome.ofApart(scenario, List.of(outcome)).plan());
        return outcome;
    }

    private DepotOutcome replayed(DepotPlan plan) {
        return DepotOutcome.of(plan, FleetReplay.runDepot(scenario, plan));
    }
}
