package depot.optimizer.sweep;

import depot.optimizer.fleet.AnswerStore;
import depot.optimizer.fleet.DepotResult;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetResult;
import depot.optimizer.fleet.HeldPlanner;
import depot.optimizer.fleet.OpenDepot;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.mip.Engine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.sweep.change.OneDepot;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One depot to be planned and replayed.
 *
 * @param scenario with this depot only
 * @param bought what is kept; empty: planned anew
 */
record DepotJob(Scenario scenario, DepotProblem problem, Optional<DepotPlan> bought) {

    static DepotJob anew(Scenario scenario, String depot) {
        return of(scenario, depot, Optional.empty());
    }

    static DepotJob keeping(Scenario scenario, DepotPlan bought) {
        return of(scenario, bought.depot(), Optional.of(bought));
    }

    private static DepotJob of(Scenario scenario, String depot, Optional<DepotPlan> bought) {
        Scenario one = OneDepot.of(scenario, depot);
        return new DepotJob(one, new DepotProblems(one).of(one.depots().get(0)), bought);
    }

    /** The same for jobs that come to the same plan, in every run of the same program; whatever a plan depends on is in the problem. */
    String key() {
        return JobKey.of(problem.toString(), bought.map(DepotPlan::toString).orElse("anew"));
    }

    /** The depot to be worked on, with what was kept. */
    OpenDepot open(AnswerStore answers) {
        return OpenDepot.alone(scenario, DepotRollout.of(problem), answers);
    }

    /**
     * The same with a plan that is known before.
     *
     * @param plan at this job's prices
     * @param bound no plan costs less
     */
    OpenDepot open(AnswerStore answers, DepotPlan plan, double bound) {
        DepotResult known = new DepotResult(plan, FleetReplay.runDepot(scenario, plan));
        return OpenDepot.known(scenario, DepotRollout.of(problem), answers, known, bound);
    }

    /**
     * Plans and replays, or takes the plan that was kept and replays it.
     *
     * @throws depot.optimizer.solve.NoPlanException if there is no plan within the limits
     */
    DepotOutcome run(CaseStore store) {
        String key = key();
        Optional<DepotPlan> kept = store.find(key)
                .flatMap(plan -> plan.depots().stream().findFirst())
                .filter(plan -> plan.depot().equals(problem.depot().id()));
        if (kept.isPresent()) {
            return replayed(kept.get());
        }
        if (bought.isEmpty()) {
            FleetResult result = new FleetPlanner(ProgressListener.SILENT).plan(scenario, new TreeMap<>());
            store.keep(key, result.plan());
            return DepotOutcome.of(
                    result.plan().depots().get(0), result.replay().depots().get(0));
        }
        DepotResult result = HeldPlanner.replan(scenario, problem.depot(), bought.get());
        store.keep(key, file(result.plan()));
        return DepotOutcome.of(result.plan(), result.replay());
    }

    /** The outcome of a plan that was made elsewhere. */
    DepotOutcome replayed(DepotPlan plan) {
        return DepotOutcome.of(plan, FleetReplay.runDepot(scenario, plan));
    }

    /** A depot's plan as a file keeps it. */
    Plan file(DepotPlan plan) {
        SolveSettings solve = scenario.solve();
        return new Plan(
                Plan.FORMAT_VERSION,
                scenario.name(),
                scenario.currency().getCurrencyCode(),
                new TreeMap<>(),
                Engine.libraryVersion(),
                new PlanSettings(
                        solve.relativeGap(), solve.nodeLimit(), solve.threads(), solve.seed(), solve.handoverMinutes()),
                plan.stop().certificate(),
                List.of(plan));
    }
}
