package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.fleet.OpenDepot;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** A case whose depots share nothing: only those that it touches are planned. */
final class ApartCase implements CaseWork {

    private final SweepCase sweepCase;
    private final Scenario changed;
    private final FleetOutcome base;
    private final Workshop workshop;
    private final Consumer<String> progress;
    private final NavigableMap<String, DepotJob> touched = new TreeMap<>();
    private final DepotsAtWork anew;
    private final NavigableMap<String, Future<DepotOutcome>> kept = new TreeMap<>();
    private final NavigableMap<String, String> plansOf = new TreeMap<>();

    /**
     * @param before the depots of the scenario as it is
     * @param changed the scenario after the case's changes
     * @param base of the scenario as it is
     */
    ApartCase(
            SweepCase sweepCase,
            Map<String, DepotJob> before,
            Scenario changed,
            FleetOutcome base,
            Workshop workshop,
            Consumer<String> progress) {
        this.sweepCase = sweepCase;
        this.changed = changed;
        this.base = base;
        this.workshop = workshop;
        this.progress = progress;
        for (DepotOutcome outcome : base.depots()) {
            String depot = outcome.plan().depot();
            DepotJob after = DepotJob.anew(changed, depot);
            if (!before.get(depot).problem().equals(after.problem())) {
                touched.put(depot, after);
            }
        }
        List<DepotOutcome> others = base.depots().stream()
                .filter(outcome -> !touched.containsKey(outcome.plan().depot()))
                .toList();
        anew = new DepotsAtWork(changed.solve().relativeGap(), others, workshop, this::tell);
    }

    @Override
    public int steps() {
        return touched.size();
    }

    @Override
    public void begin() {
        if (sweepCase.purchases() == Purchases.ANEW) {
            touched.values().forEach(anew::begin);
        } else {
            base.depots().stream()
                    .map(DepotOutcome::plan)
                    .filter(plan -> touched.containsKey(plan.depot()))
                    .forEach(plan -> kept.put(plan.depot(), workshop.submit(() -> keeping(plan))));
        }
    }

    private DepotOutcome keeping(DepotPlan plan) {
        try {
            return workshop.outcome(DepotJob.keeping(changed, plan));
        } finally {
            tell(plan.depot());
        }
    }

    /** Begins the work for a case between two others that have plans, which differ from it in one price only. */
    void begin(CaseResult low, CaseResult high, double share) {
        BetweenPrices between = new BetweenPrices(low, high, share);
        for (DepotJob job : touched.values()) {
            anew.begin(job, () -> {
                BetweenPrices.Known known = between.known(job);
                synchronized (plansOf) {
                    plansOf.put(job.problem().depot().id(), known.from());
                }
                return job.open(workshop.answers(job), known.plan(), known.bound());
            });
        }
    }

    private void tell(String depot) {
        progress.accept("%s, %s".formatted(sweepCase.name(), depot));
    }

    @Override
    public CaseResult result() {
        try {
            NavigableMap<String, OpenDepot> open = anew.finished();
            List<DepotOutcome> depots = new ArrayList<>();
            for (DepotOutcome outcome : base.depots()) {
                String depot = outcome.plan().depot();
                if (open.containsKey(depot)) {
                    depots.add(DepotsAtWork.outcome(open.get(depot)));
                } else {
                    depots.add(kept.containsKey(depot) ? Workshop.await(kept.get(depot)) : outcome);
                }
            }
            List<String> unsearched = open.values().stream()
                    .filter(depot -> !depot.searched())
                    .map(OpenDepot::depot)
                    .toList();
            plansOf.keySet().retainAll(unsearched);
            return CaseResult.planned(sweepCase, changed, FleetOutcome.ofApart(changed, depots), touchedDepots())
                    .served(plansOf, unsearched);
        } catch (NoPlanException e) {
            return CaseResult.unplanned(sweepCase, changed, touchedDepots(), e.getMessage(), OptionalDouble.empty());
        }
    }

    /** In the scenario's order. */
    private List<String> touchedDepots() {
        return base.depots().stream()
                .map(outcome -> outcome.plan().depot())
                .filter(touched::containsKey)
                .toList();
    }
}
