package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.fleet.LeftBehind;
import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.fleet.OpenDepot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.FleetJob.Beginning;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.spec.Sharing;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.Sweep.Losses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.Future;

/** Runs a sweep: the base plan, then every case and loss, several depots or fleets side by side. Results do not depend on the order in which they are done. */
public final class SweepRun {

    private final Scenario scenario;
    private final Workshop workshop;
    private final SweepProgress progress;
    private final Map<String, DepotJob> depots = new LinkedHashMap<>();
    private int done;
    private int total;

    private SweepRun(Scenario scenario, Workshop workshop, SweepProgress progress) {
        this.scenario = scenario;
        this.workshop = workshop;
        this.progress = progress;
    }

    /**
     * Runs a sweep. Its solve settings, the number of threads among them, are the scenario's.
     *
     * @param inputHashes goes into the result as it is
     * @throws NoPlanException when a depot has no base plan within the limits
     * @throws depot.optimizer.fleet.NothingFitsException when no base plan keeps what the depots share
     */
    public static SweepResult run(
            Sweep sweep,
            Scenario scenario,
            SortedMap<String, String> inputHashes,
            CaseStore store,
            SweepProgress progress) {
        try (Workshop workshop = new Workshop(scenario.solve().threads(), store)) {
            SweepRun run = new SweepRun(scenario, workshop, progress);
            FleetOutcome base = Sharing.joined(scenario) ? run.joinedBase() : run.base();
            return run.sweep(sweep, inputHashes, base);
        }
    }

    private FleetOutcome base() {
        total = scenario.depots().size();
        DepotsAtWork atWork = new DepotsAtWork(
                scenario.solve().relativeGap(), List.of(), workshop, depot -> tell("base plan, " + depot));
        depots().values().forEach(atWork::begin);
        NavigableMap<String, OpenDepot> finished = atWork.finished();
        return FleetOutcome.ofApart(
                scenario,
                scenario.depots().stream()
                        .map(depot -> DepotsAtWork.outcome(finished.get(depot.id())))
                        .toList());
    }

    private FleetOutcome joinedBase() {
        total = 1;
        FleetOutcome base =
                workshop.leaving(FleetJob.of(scenario), scenario.solve().threads());
        tell("base plan");
        return base;
    }

    private SweepResult sweep(Sweep sweep, SortedMap<String, String> inputHashes, FleetOutcome base) {
        FleetJob job = FleetJob.of(scenario);
        List<SweepCase> asked = CaseList.of(sweep);
        Optional<LeftBehind> left =
                asked.stream().anyMatch(each -> each.purchases() == Purchases.ANEW) && Sharing.joined(scenario)
                        ? workshop.left(job)
                        : Optional.empty();
        List<CaseWork> works =
                asked.stream().map(each -> work(each, job, left, base)).toList();
        List<LossWork> losses = losses(sweep, base);
        total += works.stream().mapToInt(CaseWork::steps).sum() + losses.size();
        CaseOrder order = new CaseOrder(asked, works, CaseResult.planned(Exchange.BASE, scenario, base, List.of()));
        order.begin();
        List<Future<LossResult>> lossFutures = losses.stream()
                .map(work -> workshop.submit(() -> {
                    LossResult result = work.result(workshop);
                    tell(work.words());
                    return result;
                }))
                .toList();
        Exchange exchange = new Exchange(workshop, scenario, base, order.results());
        List<CaseResult> exchanged = exchange.results();
        // Losses and kept purchases are about the base plan as it was found.
        boolean asFound = !losses.isEmpty() || asked.stream().anyMatch(each -> each.purchases() == Purchases.KEPT);
        FleetOutcome best = asFound ? base : exchange.base();
        return new SweepResult(
                sweep,
                scenario,
                inputHashes,
                best,
                new FleetExchange(workshop, scenario, best, exchanged).results(),
                lossFutures.stream().map(Workshop::await).toList());
    }

    private CaseWork work(SweepCase sweepCase, FleetJob job, Optional<LeftBehind> left, FleetOutcome base) {
        Scenario changed = Changes.apply(scenario, sweepCase.changes());
        // What the base plan's search has found may do for depots that nothing makes harder.
        Touched touched = new Serving(scenario).servesBudgetsAside(List.of(), sweepCase.changes())
                ? Touched.REPRICED
                : Touched.LEFT_OUT;
        Optional<Beginning> beginning = left.map(each -> new Beginning(job.key(), each, touched));
        return Sharing.joined(changed)
                ? new JoinedCase(sweepCase, job, beginning, changed, base, workshop, this::tell)
                : new ApartCase(sweepCase, depots(), changed, base, workshop, this::tell);
    }

    /** The depots as they are, one by one. */
    private Map<String, DepotJob> depots() {
        if (depots.isEmpty()) {
            scenario.depots().forEach(depot -> depots.put(depot.id(), DepotJob.anew(scenario, depot.id())));
        }
        return depots;
    }

    private List<LossWork> losses(Sweep sweep, FleetOutcome base) {
        if (sweep.losses().isEmpty()) {
            return List.of();
        }
        Losses asked = sweep.losses().get();
        if (Sharing.joined(scenario)) {
            return new PhaseLosses(asked, scenario, base).all();
        }
        List<LossWork> losses = new ArrayList<>();
        base.depots().forEach(outcome -> LossList.of(asked, outcome.plan(), "")
                .forEach(loss -> losses.add(new ApartLoss(scenario, outcome, loss))));
        return losses;
    }

    private synchronized void tell(String what) {
        done++;
        progress.planned(what, done, total);
    }
}
