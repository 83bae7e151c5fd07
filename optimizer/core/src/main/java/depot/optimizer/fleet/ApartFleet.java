package depot.optimizer.fleet;

import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/**
 * Plans depots that share nothing. Their costs and bounds add up, so that the gap is the fleet's: every depot is planned with little effort, which
 * leaves most of them well within the gap and some outside it; then the widest open are worked on until the sum is within the gap.
 */
final class ApartFleet {

    /** Depots that are worked on before the sum is looked at again: this many at least. */
    private static final int FEWEST = 4;

    private final Scenario scenario;
    private final List<OpenDepot> depots;
    private final List<OpenDepot> biggestFirst;
    private final ProgressListener progress;
    private final RunControl control;
    private int planned;

    ApartFleet(Scenario scenario, List<DepotRollout> rollouts, ProgressListener progress, RunControl control) {
        this.scenario = scenario;
        this.progress = progress;
        this.control = control;
        depots = rollouts.stream()
                .map(rollout -> new OpenDepot(scenario, rollout, control.answers()))
                .toList();
        // The longest solves begin first, so that none is left over at the end; the order of the results does not
        // depend on it.
        Comparator<Integer> bySize = Comparator.comparingLong(d -> size(rollouts.get(d)));
        List<Integer> places = new ArrayList<>();
        for (int d = 0; d < rollouts.size(); d++) {
            places.add(d);
        }
        biggestFirst =
                places.stream().sorted(bySize.reversed()).map(depots::get).toList();
    }

    private static long size(DepotRollout rollout) {
        return rollout.days().stream()
                .mapToLong(day -> rollout.kind(day).handovers().size())
                .map(handovers -> handovers * handovers)
                .sum();
    }

    /**
     * The plans, in the order of the depots.
     *
     * @throws StoppedException if the run is stopped before every depot has a plan
     * @throws depot.optimizer.solve.NoPlanException if a depot has no plan within the limits
     */
    FleetPlan solve() {
        ExecutorService threads = Executors.newFixedThreadPool(scenario.solve().threads());
        try {
            each(threads, biggestFirst, this::tell);
            try {
                closeGap(threads);
            } catch (StoppedException e) {
                progress.stopped();
            }
        } finally {
            threads.shutdownNow();
        }
        return FleetPlan.ofIndependent(
                depots.stream().map(OpenDepot::certified).toList(),
                scenario.solve().relativeGap());
    }

    private void closeGap(ExecutorService threads) {
        while (!certificate().proven()) {
            List<OpenDepot> widest = widest();
            if (widest.isEmpty()) {
                return;
            }
            progress.fleetPlan(certificate());
            each(threads, widest, depot -> {});
        }
    }

    /** Those that are widest open and not done: as many as could close the gap together, and some in any case. */
    private List<OpenDepot> widest() {
        List<OpenDepot> byWidth = depots.stream()
                .filter(depot -> !depot.done())
                .sorted(Comparator.comparingDouble(OpenDepot::open).reversed())
                .toList();
        Certificate fleet = certificate();
        double excess = fleet.cost() - fleet.bound() - scenario.solve().relativeGap() * Math.abs(fleet.cost());
        List<OpenDepot> widest = new ArrayList<>();
        for (OpenDepot depot : byWidth) {
            if (excess <= 0 && widest.size() >= FEWEST) {
                break;
            }
            widest.add(depot);
            excess -= depot.open();
        }
        return widest;
    }

    private Certificate certificate() {
        double cost = 0;
        double bound = 0;
        for (OpenDepot depot : depots) {
            cost += depot.best().rollout().cost();
            bound += Math.min(depot.best().rollout().cost(), depot.best().bound());
        }
        return Certificate.of(cost, bound, scenario.solve().relativeGap());
    }

    /** Has some depots make their next effort. */
    private void each(ExecutorService threads, List<OpenDepot> some, Consumer<OpenDepot> done) {
        List<Future<?>> futures = new ArrayList<>();
        for (OpenDepot depot : some) {
            futures.add(threads.submit(() -> {
                if (control.stop().getAsBoolean()) {
                    throw new StoppedException();
                }
                depot.further();
                done.accept(depot);
            }));
        }
        for (Future<?> future : futures) {
            Awaited.result(future, "interrupted before every depot had a plan");
        }
    }

    private synchronized void tell(OpenDepot depot) {
        ProvenDepot proven = depot.best();
        progress.depotDone(
                depot.depot(),
                ++planned,
                depots.size(),
                Certificate.of(
                        proven.rollout().cost(),
                        Math.min(proven.rollout().cost(), proven.bound()),
                        scenario.solve().relativeGap()));
    }
}
