package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.spec.Sweep;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Future;

/** Runs a sweep: the base plan, then every case and loss, several depots side by side. Results do not depend on the order in which they are done. */
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
     */
    public static SweepResult run(
            Sweep sweep,
            Scenario scenario,
            SortedMap<String, String> inputHashes,
            CaseStore store,
            SweepProgress progress) {
        try (Workshop workshop = new Workshop(scenario.solve().threads(), store)) {
            SweepRun run = new SweepRun(scenario, workshop, progress);
            List<DepotOutcome> base = run.base();
            return run.sweep(sweep, inputHashes, base);
        }
    }

    private List<DepotOutcome> base() {
        List<Depot> depots = scenario.depots();
        total = depots.size();
        List<Future<DepotOutcome>> futures = depots.stream()
                .map(depot -> workshop.submit(() -> {
                    DepotOutcome outcome = workshop.outcome(DepotJob.anew(scenario, depot.id()));
                    tell("base plan, " + depot.id());
                    return outcome;
                }))
                .toList();
        return futures.stream().map(Workshop::await).toList();
    }

    private SweepResult sweep(Sweep sweep, SortedMap<String, String> inputHashes, List<DepotOutcome> base) {
        List<CaseWork> cases = CaseList.of(sweep).stream()
                .map(each -> new CaseWork(each, base))
                .toList();
        List<LossWork> losses = new ArrayList<>();
        sweep.losses()
                .ifPresent(asked -> base.forEach(outcome -> LossList.of(asked, outcome.plan())
                        .forEach(loss -> losses.add(new LossWork(scenario, outcome, loss)))));
        total += cases.stream().mapToInt(work -> work.touched.size()).sum() + losses.size();
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
                exchanged,
                lossFutures.stream().map(Workshop::await).toList());
    }

    private synchronized void tell(String what) {
        done++;
        progress.planned(what, done, total);
    }

    /** A case on its way: only depots that it touches are planned. */
    private final class CaseWork {
        private final SweepCase sweepCase;
        private final Scenario changed;
        private final List<DepotOutcome> base;
        private final List<String> touched = new ArrayList<>();
        private final SortedMap<String, Future<DepotOutcome>> futures = new TreeMap<>();

        CaseWork(SweepCase sweepCase, List<DepotOutcome> base) {
            this.sweepCase = sweepCase;
            this.base = base;
            changed = Changes.apply(scenario, sweepCase.changes());
            for (Depot depot : scenario.depots()) {
                DepotJob before = DepotJob.anew(scenario, depot.id());
                DepotJob after = DepotJob.anew(changed, depot.id());
                if (!before.problem().equals(after.problem())) {
                    touched.add(depot.id());
                }
            }
        }

        void begin() {
            for (DepotOutcome outcome : base) {
                String depot = outcome.plan().depot();
                if (touched.contains(depot)) {
                    futures.put(depot, workshop.submit(() -> outcome(outcome.plan())));
                }
            }
        }

        private DepotOutcome outcome(DepotPlan basePlan) {
            try {
                return workshop.outcome(
                        sweepCase.purchases() == Purchases.ANEW
                                ? DepotJob.anew(changed, basePlan.depot())
                                : DepotJob.keeping(changed, basePlan));
            } finally {
                tell("%s, %s".formatted(sweepCase.name(), basePlan.depot()));
            }
        }

        CaseResult result() {
            List<DepotOutcome> depots = new ArrayList<>();
            String noPlan = "";
            for (DepotOutcome outcome : base) {
                Future<DepotOutcome> future = futures.get(outcome.plan().depot());
                try {
                    depots.add(future == null ? outcome : Workshop.await(future));
                } catch (NoPlanException e) {
                    noPlan = noPlan.isEmpty() ? e.getMessage() : noPlan;
                }
            }
            return new CaseResult(
                    sweepCase,
                    changed,
                    noPlan.isEmpty() ? List.copyOf(depots) : List.of(),
                    List.copyOf(touched),
                    new TreeMap<>(),
                    noPlan);
        }
    }
}
