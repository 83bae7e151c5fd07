package depot.optimizer.fleet;

import depot.optimizer.mip.Engine;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.ShortageCure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Plans the depots of a fleet, several at a time. Nothing couples them, so the fleet's cost and bound are the sums of theirs. */
public final class FleetPlanner {

    private final ProgressListener progress;

    /** A planner that tells a listener how far it is. */
    public FleetPlanner(ProgressListener progress) {
        this.progress = progress;
    }

    /**
     * Plans, replays and explains.
     *
     * @param inputHashes goes into the plan as it is
     * @throws NoPlanException when a depot has no plan within the limits
     */
    public FleetResult plan(Scenario scenario, SortedMap<String, String> inputHashes) {
        List<ProvenDepot> depots = solveAll(scenario);
        List<DepotPlan> plans = depots.stream().map(ProvenDepot::plan).toList();
        List<ExplainedShortage> shortages = new ArrayList<>();
        DepotProblems problems = new DepotProblems(scenario);
        for (int d = 0; d < plans.size(); d++) {
            shortages.addAll(ShortageCure.explain(problems.of(scenario.depots().get(d)), plans.get(d)));
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
                fleetCertificate(plans, solve.relativeGap()),
                plans);
        return new FleetResult(
                plan, new ReplayReport(depots.stream().map(ProvenDepot::replay).toList()), List.copyOf(shortages));
    }

    private static Certificate fleetCertificate(List<DepotPlan> plans, double gap) {
        double cost =
                plans.stream().mapToDouble(p -> p.stop().certificate().cost()).sum();
        double bound =
                plans.stream().mapToDouble(p -> p.stop().certificate().bound()).sum();
        return Certificate.of(cost, bound, gap);
    }

    private List<ProvenDepot> solveAll(Scenario scenario) {
        int total = scenario.depots().size();
        ExecutorService pool = Executors.newFixedThreadPool(scenario.solve().threads());
        try {
            int[] done = {0};
            Map<Depot, Future<ProvenDepot>> futures = new LinkedHashMap<>();
            scenario.depots().forEach(depot -> futures.put(depot, null));
            for (DepotProblem problem : biggestFirst(scenario)) {
                futures.put(problem.depot(), pool.submit(() -> {
                    ProvenDepot proven = ProvenDepot.solve(scenario, problem);
                    synchronized (done) {
                        progress.depotDone(
                                problem.depot().id(),
                                ++done[0],
                                total,
                                proven.plan().stop().certificate());
                    }
                    return proven;
                }));
            }
            List<ProvenDepot> results = new ArrayList<>();
            for (Future<ProvenDepot> future : futures.values()) {
                results.add(await(future));
            }
            return results;
        } finally {
            pool.shutdownNow();
        }
    }

    /** The longest solves begin first, so that none is left over at the end; the order of the results does not depend on it. */
    private static List<DepotProblem> biggestFirst(Scenario scenario) {
        DepotProblems problems = new DepotProblems(scenario);
        return scenario.depots().stream()
                .map(problems::of)
                .sorted(Comparator.comparingLong(FleetPlanner::size).reversed())
                .toList();
    }

    private static long size(DepotProblem problem) {
        return problem.days().stream()
                .mapToLong(
                        day -> (long) day.handovers().size() * day.handovers().size())
                .sum();
    }

    private static ProvenDepot await(Future<ProvenDepot> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new NoPlanException("interrupted before every depot had a plan");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
