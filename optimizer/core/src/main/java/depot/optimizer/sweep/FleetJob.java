package depot.optimizer.sweep;

import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Leaving;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.LeftBehind;
import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.QuantityPrices.Tier;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A fleet whose depots are to be planned together, and replayed.
 *
 * @param scenario solved by one thread
 * @param rollouts one for each depot, with the limits that it shares
 * @param tiers quantity prices
 * @param beginning where the search begins; empty: with nothing
 */
record FleetJob(Scenario scenario, List<DepotRollout> rollouts, List<Tier> tiers, Optional<Beginning> beginning) {

    /**
     * What the search for another job has left behind.
     *
     * @param key of that job, which says all that this came of
     * @param touched what becomes of plans of depots that have changed since
     */
    record Beginning(String key, LeftBehind left, Touched touched) {}

    /** One that begins with nothing. */
    static FleetJob of(Scenario scenario) {
        Scenario single = withThreads(scenario, 1);
        DepotProblems problems = new DepotProblems(single);
        QuantityPrices quantities = new QuantityPrices(single);
        List<Tier> tiers = SharedLimits.of(single).stream()
                .filter(limit -> limit.kind() == SharedLimit.Kind.QUANTITY)
                .flatMap(limit -> quantities.tiers(limit).stream())
                .toList();
        return new FleetJob(
                single, single.depots().stream().map(problems::rollout).toList(), tiers, Optional.empty());
    }

    /** The same from another beginning. */
    FleetJob from(Optional<Beginning> other) {
        return new FleetJob(scenario, rollouts, tiers, other);
    }

    static Scenario withThreads(Scenario scenario, int threads) {
        SolveSettings solve = scenario.solve();
        return scenario.withSolve(new SolveSettings(
                solve.relativeGap(),
                solve.nodeLimit(),
                solve.timeLimitSeconds(),
                threads,
                solve.seed(),
                solve.handoverMinutes()));
    }

    /** The same for jobs that come to the same plan, in every run of the same program. */
    String key() {
        return JobKey.of(
                "fleet",
                rollouts.toString(),
                tiers.toString(),
                beginning.map(from -> from.touched() + " " + from.key()).orElse("anew"));
    }

    private String leftKey() {
        return JobKey.of(key(), "left behind");
    }

    /** Depots whose part differs from that in another job about the same depots; all where they share other prices. */
    List<String> touchedSince(FleetJob before) {
        List<String> touched = new ArrayList<>();
        for (int d = 0; d < rollouts.size(); d++) {
            if (!tiers.equals(before.tiers) || !rollouts.get(d).equals(before.rollouts.get(d))) {
                touched.add(rollouts.get(d).depot().id());
            }
        }
        return List.copyOf(touched);
    }

    /**
     * Plans and replays, or takes the plan that was kept and replays it. The plan does not depend on the number of threads.
     *
     * @throws depot.optimizer.solve.NoPlanException if there is no plan within the limits
     * @throws depot.optimizer.fleet.NothingFitsException if none keeps what the depots share
     */
    FleetOutcome run(CaseStore store, int threads) {
        String key = key();
        Optional<Plan> kept = store.find(key);
        if (kept.isPresent()) {
            return FleetOutcome.replayed(scenario, kept.get());
        }
        FleetPlanner planner = new FleetPlanner(ProgressListener.SILENT);
        Scenario asked = withThreads(scenario, threads);
        Plan plan = beginning
                .map(from -> planner.planFrom(from.left(), from.touched(), asked, new TreeMap<>()))
                .orElseGet(() -> planner.plan(asked, new TreeMap<>(), Method.APART))
                .plan();
        store.keep(key, plan);
        return FleetOutcome.replayed(scenario, plan);
    }

    /**
     * The same, when others are to begin with what the search leaves behind. That is kept before the plan: where both are found, it is of the same search.
     *
     * @throws depot.optimizer.solve.NoPlanException if there is no plan within the limits
     * @throws depot.optimizer.fleet.NothingFitsException if none keeps what the depots share
     */
    FleetOutcome runLeaving(CaseStore store, int threads) {
        String key = key();
        Optional<Plan> kept = store.find(key);
        if (kept.isPresent() && (!sharing() || store.find(leftKey()).isPresent())) {
            return FleetOutcome.replayed(scenario, kept.get());
        }
        Leaving leaving =
                new FleetPlanner(ProgressListener.SILENT).planLeaving(withThreads(scenario, threads), new TreeMap<>());
        leaving.left().ifPresent(left -> store.keep(leftKey(), left));
        store.keep(key, leaving.result().plan());
        return FleetOutcome.replayed(scenario, leaving.result().plan());
    }

    /** What {@link #runLeaving} has left in a store; empty where the depots share nothing. */
    Optional<LeftBehind> left(CaseStore store) {
        return store.find(leftKey()).map(file -> LeftBehind.of(scenario, rollouts, file));
    }

    private boolean sharing() {
        return rollouts.stream().anyMatch(rollout -> !rollout.limits().isEmpty());
    }
}
