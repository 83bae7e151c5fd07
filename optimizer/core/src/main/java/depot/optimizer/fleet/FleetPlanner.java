package depot.optimizer.fleet;

import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Plans the depots of a fleet, several at a time: apart where nothing couples them, together where something does. */
public final class FleetPlanner {

    private final ProgressListener progress;
    private final RunControl control;

    /** A planner that tells a listener how far it is. */
    public FleetPlanner(ProgressListener progress) {
        this(progress, RunControl.NONE);
    }

    /** A planner that can be stopped, and that keeps what it has worked out. */
    public FleetPlanner(ProgressListener progress, RunControl control) {
        this.progress = progress;
        this.control = control;
    }

    /**
     * Plans, replays and explains.
     *
     * @param inputHashes goes into the plan as it is
     * @throws NoPlanException when a depot has no plan within the limits, or the fleet none within what it shares
     */
    public FleetResult plan(Scenario scenario, SortedMap<String, String> inputHashes) {
        return plan(scenario, inputHashes, Method.APART);
    }

    /** How a fleet is planned. */
    public enum Method {
        /** Depots apart, by prices of what they share. */
        APART,
        /** All depots in one model. */
        WHOLE
    }

    /**
     * The same by a given method.
     *
     * @throws NoPlanException when a depot has no plan within the limits, or the fleet none within what it shares
     */
    public FleetResult plan(Scenario scenario, SortedMap<String, String> inputHashes, Method method) {
        DepotProblems problems = new DepotProblems(scenario);
        List<DepotRollout> rollouts =
                scenario.depots().stream().map(problems::rollout).toList();
        FleetPlan fleet;
        if (method == Method.WHOLE) {
            fleet = WholeMethod.solve(scenario, rollouts);
        } else if (SharedLimits.of(scenario).isEmpty()) {
            fleet = FleetPlan.ofIndependent(
                    solveAll(scenario, rollouts), scenario.solve().relativeGap());
        } else {
            fleet = new SharedFleet(scenario, rollouts, progress, control).solve();
        }
        return fleet.result(scenario, inputHashes, rollouts);
    }

    private List<ProvenDepot> solveAll(Scenario scenario, List<DepotRollout> rollouts) {
        int total = scenario.depots().size();
        ExecutorService pool = Executors.newFixedThreadPool(scenario.solve().threads());
        try {
            int[] done = {0};
            Map<Depot, Future<ProvenDepot>> futures = new LinkedHashMap<>();
            scenario.depots().forEach(depot -> futures.put(depot, null));
            for (DepotRollout rollout : biggestFirst(rollouts)) {
                futures.put(rollout.depot(), pool.submit(() -> {
                    ProvenDepot proven = alone(scenario, rollout);
                    synchronized (done) {
                        Certificate certificate = Certificate.of(
                                proven.rollout().cost(),
                                proven.bound(),
                                scenario.solve().relativeGap());
                        progress.depotDone(rollout.depot().id(), ++done[0], total, certificate);
                    }
                    return proven;
                }));
            }
            List<ProvenDepot> results = new ArrayList<>();
            for (Future<ProvenDepot> future : futures.values()) {
                results.add(Awaited.result(future, "interrupted before every depot had a plan"));
            }
            return results;
        } finally {
            pool.shutdownNow();
        }
    }

    private ProvenDepot alone(Scenario scenario, DepotRollout rollout) {
        if (control.stop().getAsBoolean()) {
            throw new StoppedException();
        }
        return ProvenDepot.kept(
                control.answers(), rollout.depot().id(), scenario, rollout, () -> ProvenDepot.solve(scenario, rollout));
    }

    /** The longest solves begin first, so that none is left over at the end; the order of the results does not depend on it. */
    private static List<DepotRollout> biggestFirst(List<DepotRollout> rollouts) {
        return rollouts.stream()
                .sorted(Comparator.comparingLong(FleetPlanner::size).reversed())
                .toList();
    }

    private static long size(DepotRollout rollout) {
        return rollout.days().stream()
                .mapToLong(day -> rollout.kind(day).handovers().size())
                .map(handovers -> handovers * handovers)
                .sum();
    }
}
