package depot.optimizer.rerun;

import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetResult;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.mip.Engine;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.solve.ShortageCure;
import depot.optimizer.sweep.change.SomeDepots;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Plans a fleet again after its tables have changed. Depots whose problem is the same keep their plan as it is; the others are planned with everything
 * that earlier runs bought counted as there already, and their chargers keep names and places where they can.
 *
 * <p>A plan that was best stays best once it has been carried out: whatever another plan saves by using pieces that are there, this one saves as well.
 * That is why a depot that nothing touches needs no new solve, and why its certificate stays true.
 */
public final class RerunPlanner {

    private final EarlierRun earlier;
    private final Scenario scenario;
    private final double routineWeight;
    private final Holdings holdings;

    private RerunPlanner(EarlierRun earlier, Scenario scenario, double routineWeight) {
        this.earlier = earlier;
        this.scenario = scenario;
        this.routineWeight = routineWeight;
        holdings = Holdings.after(earlier, scenario);
    }

    /**
     * Plans again.
     *
     * @param inputHashes of the changed tables; goes into the plan as it is
     * @param routineWeight what a changed line of the daily routine is weighed with, each season day by itself, in money a year; 0: not at all
     * @param progress is told of depots that are planned again
     * @throws depot.optimizer.solve.NoPlanException when a depot has no plan within the limits
     */
    public static RerunResult plan(
            EarlierRun earlier,
            Scenario scenario,
            SortedMap<String, String> inputHashes,
            double routineWeight,
            ProgressListener progress) {
        return new RerunPlanner(earlier, scenario, routineWeight).plan(inputHashes, progress);
    }

    private RerunResult plan(SortedMap<String, String> inputHashes, ProgressListener progress) {
        SortedMap<String, List<String>> touched = touched();
        Optional<FleetResult> solved = touched.isEmpty()
                ? Optional.empty()
                : Optional.of(new FleetPlanner(progress)
                        .planBeside(
                                untouched(touched.keySet()),
                                SomeDepots.of(holdings.scenario(), touched.keySet()),
                                inputHashes));
        Map<String, DepotPlan> fresh = solved.stream()
                .flatMap(result -> result.plan().depots().stream())
                .collect(Collectors.toMap(DepotPlan::depot, plan -> plan));
        DepotChanges maker = new DepotChanges(earlier, scenario, holdings, routineWeight);
        List<DepotChange> changes = new ArrayList<>();
        for (Depot depot : scenario.depots()) {
            DepotPlan plan = fresh.get(depot.id());
            changes.add(plan == null ? maker.kept(depot.id()) : maker.planned(plan, touched.get(depot.id())));
        }
        List<DepotPlan> plans =
                changes.stream().flatMap(change -> change.after().stream()).toList();
        changes.addAll(gone(maker));
        Plan plan = fleet(plans, inputHashes);
        return new RerunResult(
                earlier,
                scenario,
                plan,
                FleetReplay.run(scenario, plan),
                shortages(plans, touched.keySet(), solved),
                List.copyOf(changes),
                Optional.empty());
    }

    /** Cost and bound of the depots that keep their plans. */
    private Certificate untouched(Set<String> touched) {
        return sum(scenario.depots().stream()
                .map(Depot::id)
                .filter(depot -> !touched.contains(depot))
                .map(depot -> earlier.depot(depot).orElseThrow())
                .toList());
    }

    private Certificate sum(List<DepotPlan> plans) {
        return Certificate.sum(
                plans.stream().map(plan -> plan.stop().certificate()).toList(),
                scenario.solve().relativeGap());
    }

    /** Depots that have to be planned, and why. */
    private SortedMap<String, List<String>> touched() {
        Comparison comparison = new Comparison(earlier, scenario);
        SortedMap<String, List<String>> touched = new TreeMap<>();
        for (Depot depot : scenario.depots()) {
            Optional<DepotPlan> plan = earlier.depot(depot.id());
            List<String> reasons = plan.map(comparison::reasons).orElse(List.of("depot"));
            if (!reasons.isEmpty()) {
                touched.put(depot.id(), reasons);
            }
        }
        return touched;
    }

    private List<DepotChange> gone(DepotChanges maker) {
        Set<String> now = scenario.depots().stream().map(Depot::id).collect(Collectors.toSet());
        return earlier.plan().depots().stream()
                .filter(plan -> !now.contains(plan.depot()))
                .map(maker::gone)
                .toList();
    }

    /** Those of planned depots as they were found, with all that is there; those of the others as in any plan. */
    private List<ExplainedShortage> shortages(
            List<DepotPlan> plans, Set<String> touched, Optional<FleetResult> solved) {
        DepotProblems problems = new DepotProblems(scenario);
        List<ExplainedShortage> all = new ArrayList<>();
        for (int d = 0; d < plans.size(); d++) {
            DepotPlan plan = plans.get(d);
            if (!touched.contains(plan.depot())) {
                all.addAll(ShortageCure.explain(problems.of(scenario.depots().get(d)), plan));
            }
            solved.stream()
                    .flatMap(result -> result.shortages().stream())
                    .filter(shortage -> shortage.depot().equals(plan.depot()))
                    .forEach(all::add);
        }
        return List.copyOf(all);
    }

    private Plan fleet(List<DepotPlan> plans, SortedMap<String, String> inputHashes) {
        SolveSettings solve = scenario.solve();
        return new Plan(
                Plan.FORMAT_VERSION,
                scenario.name(),
                scenario.currency().getCurrencyCode(),
                inputHashes,
                Engine.libraryVersion(),
                new PlanSettings(
                        solve.relativeGap(), solve.nodeLimit(), solve.threads(), solve.seed(), solve.handoverMinutes()),
                sum(plans),
                plans);
    }
}
