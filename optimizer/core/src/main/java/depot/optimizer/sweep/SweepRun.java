package depot.optimizer.sweep;

import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.spec.Sharing;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.Sweep.Losses;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.Future;

/** Runs a sweep: the base plan, then every case and loss, several depots or fleets side by side. Results do not depend on the order in which they are done. */
public final class SweepRun {

    private final Scenario scenario;
    private final Workshop workshop;
    private final SweepProgress progress;
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
        List<Depot> depots = scenario.depots();
        total = depots.size();
        List<Future<DepotOutcome>> futures = depots.stream()
                .map(depot -> workshop.submit(() -> {
                    DepotOutcome outcome = workshop.outcome(DepotJob.anew(scenario, depot.id()));
                    tell("base plan, " + depot.id());
                    return outcome;
                }))
                .toList();
        return FleetOutcome.ofApart(
                scenario, futures.stream().map(Workshop::await).toList());
    }

    private FleetOutcome joinedBase() {
        total = 1;
        FleetOutcome base =
                workshop.outcome(FleetJob.of(scenario), scenario.solve().threads());
        tell("base plan");
        return base;
    }

    private SweepResult sweep(Sweep sweep, SortedMap<String, String> inputHashes, FleetOutcome base) {
        FleetJob job = FleetJob.of(scenario);
        List<CaseWork> cases =
                CaseList.of(sweep).stream().map(each -> work(each, job, base)).toList();
        List<LossWork> losses = losses(sweep, base);
        total += cases.stream().mapToInt(CaseWork::steps).sum() + losses.size();
        cases.forEach(CaseWork::begin);
        List<Future<LossResult>> lossFutures = losses.stream()
                .map(work -> workshop.submit(() -> {
                    LossResult result = work.result(workshop);
                    tell(work.words());
                    return result;
                }))
                .toList();
        List<CaseResult> found = cases.stream().map(CaseWork::result).toList();
        List<CaseResult> exchanged = new Exchange(workshop, scenario, base, found).results();
        return new SweepResult(
                sweep,
                scenario,
                inputHashes,
                base,
                new FleetExchange(workshop, scenario, base, exchanged).results(),
                lossFutures.stream().map(Workshop::await).toList());
    }

    private CaseWork work(SweepCase sweepCase, FleetJob job, FleetOutcome base) {
        Scenario changed = Changes.apply(scenario, sweepCase.changes());
        return Sharing.joined(changed)
                ? new JoinedCase(sweepCase, job, changed, base, workshop, this::tell)
                : new ApartCase(sweepCase, scenario, changed, base, workshop, this::tell);
    }

    /** Losses are asked of depots by themselves, also where they share something: what fails in one is no matter of the others. */
    private List<LossWork> losses(Sweep sweep, FleetOutcome base) {
        if (sweep.losses().isEmpty()) {
            return List.of();
        }
        Losses asked = sweep.losses().get();
        List<LossWork> losses = new ArrayList<>();
        if (Sharing.joined(scenario)) {
            scenario.depots().forEach(depot -> losses.addAll(LossWork.inPhases(asked, scenario, base.of(depot.id()))));
        } else {
            base.depots().forEach(outcome -> LossList.of(asked, outcome.plan(), "")
                    .forEach(loss -> losses.add(new LossWork(scenario, outcome, loss))));
        }
        return losses;
    }

    private synchronized void tell(String what) {
        done++;
        progress.planned(what, done, total);
    }
}
