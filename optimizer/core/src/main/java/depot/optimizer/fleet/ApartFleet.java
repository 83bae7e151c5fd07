package depot.optimizer.fleet;

import depot.optimizer.fleet.OpenDepots.Aim;
import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Plans depots that share nothing. Their costs and bounds add up, so that the gap asked for is that of the sum. */
final class ApartFleet {

    private final Scenario scenario;
    private final Certificate others;
    private final Aim aim;
    private final List<OpenDepot> depots;
    private final List<OpenDepot> biggestFirst;
    private final ProgressListener progress;
    private final RunControl control;
    private int planned;

    /**
     * @param others cost and bound of depots of the same fleet that are not planned here
     */
    ApartFleet(
            Scenario scenario,
            List<DepotRollout> rollouts,
            Certificate others,
            Aim aim,
            ProgressListener progress,
            RunControl control) {
        this.scenario = scenario;
        this.others = others;
        this.aim = aim;
        this.progress = progress;
        this.control = control;
        depots = rollouts.stream()
                .map(rollout -> OpenDepot.alone(scenario, rollout, control.answers()))
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
        try (DepotThreads threads = new DepotThreads(scenario.solve().threads(), control)) {
            OpenDepots open = new OpenDepots(biggestFirst, threads);
            open.first(this::tell);
            closeGap(open);
        }
        boolean closed = certificate().proven();
        return FleetPlan.ofIndependent(
                depots.stream()
                        .map(depot -> closed ? depot.certified() : depot.best().certified(scenario))
                        .toList(),
                scenario.solve().relativeGap());
    }

    /** Of all depots of the fleet. */
    private Certificate certificate() {
        double cost = others.cost();
        double bound = others.bound();
        for (OpenDepot depot : depots) {
            cost += depot.best().rollout().cost();
            bound += Math.min(depot.best().rollout().cost(), depot.best().bound());
        }
        return Certificate.of(cost, bound, scenario.solve().relativeGap());
    }

    private void closeGap(OpenDepots open) {
        try {
            while (open.further(others, scenario.solve().relativeGap(), aim)) {
                progress.fleetPlan(certificate());
            }
        } catch (StoppedException e) {
            progress.stopped();
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
