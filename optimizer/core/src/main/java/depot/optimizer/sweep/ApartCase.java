package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
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
    private final List<String> touched = new ArrayList<>();
    private final SortedMap<String, Future<DepotOutcome>> futures = new TreeMap<>();

    /**
     * @param changed the scenario after the case's changes
     * @param base of the scenario as it is
     */
    ApartCase(
            SweepCase sweepCase,
            Scenario scenario,
            Scenario changed,
            FleetOutcome base,
            Workshop workshop,
            Consumer<String> progress) {
        this.sweepCase = sweepCase;
        this.changed = changed;
        this.base = base;
        this.workshop = workshop;
        this.progress = progress;
        for (Depot depot : scenario.depots()) {
            DepotJob before = DepotJob.anew(scenario, depot.id());
            DepotJob after = DepotJob.anew(changed, depot.id());
            if (!before.problem().equals(after.problem())) {
                touched.add(depot.id());
            }
        }
    }

    @Override
    public int steps() {
        return touched.size();
    }

    @Override
    public void begin() {
        for (DepotOutcome outcome : base.depots()) {
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
            progress.accept("%s, %s".formatted(sweepCase.name(), basePlan.depot()));
        }
    }

    @Override
    public CaseResult result() {
        List<DepotOutcome> depots = new ArrayList<>();
        String noPlan = "";
        for (DepotOutcome outcome : base.depots()) {
            Future<DepotOutcome> future = futures.get(outcome.plan().depot());
            try {
                depots.add(future == null ? outcome : Workshop.await(future));
            } catch (NoPlanException e) {
                noPlan = noPlan.isEmpty() ? e.getMessage() : noPlan;
            }
        }
        List<String> all = List.copyOf(touched);
        return noPlan.isEmpty()
                ? CaseResult.planned(sweepCase, changed, FleetOutcome.ofApart(changed, depots), all)
                : CaseResult.unplanned(sweepCase, changed, all, noPlan, OptionalDouble.empty());
    }
}
