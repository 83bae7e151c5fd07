package depot.optimizer.benchmark;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetResult;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.rerun.DepotChange;
import depot.optimizer.rerun.DepotChange.Status;
import depot.optimizer.rerun.EarlierRun;
import depot.optimizer.rerun.RerunPlanner;
import depot.optimizer.rerun.RerunResult;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Work;
import depot.optimizer.sweep.CaseStore;
import depot.optimizer.sweep.SweepProgress;
import depot.optimizer.sweep.SweepRun;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.Sweep.NamedCase;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Times planning again after a change, as a multiple of the plan before it. */
final class Replanning {

    private static final BigDecimal MORE_WORK = new BigDecimal("1.1");

    /** Cases of a sweep: so many for each of two prices, and for single crews. */
    private static final int PRICE_CASES = 10;

    private static final int CREW_CASES = 20;

    private Replanning() {}

    /** For each depot: one of its crews works a tenth more. */
    static void afterOneCrew(Scenario scenario) {
        Timed<FleetResult> base = base(scenario);
        EarlierRun run = new EarlierRun(base.result().plan(), scenario, List.of());
        System.out.printf("%-16s %10s %8s %14s %s%n", "changed crew", "seconds", "ratio", "cost of change", "depots");
        double worst = 0;
        for (Crew crew : oneOfEachDepot(scenario)) {
            Scenario changed =
                    Changes.apply(scenario, List.of(new Change(ChangeKind.WORK_HOURS, crew.id(), MORE_WORK)));
            Timed<RerunResult> rerun =
                    Timed.of(() -> RerunPlanner.plan(run, changed, new TreeMap<>(), 0, ProgressListener.SILENT));
            double ratio = rerun.seconds() / base.seconds();
            worst = Math.max(worst, ratio);
            System.out.printf(
                    Locale.ROOT,
                    "%-16s %10.2f %8.3f %14.2f %s%s%n",
                    crew.id(),
                    rerun.seconds(),
                    ratio,
                    rerun.result().costOfChange(),
                    again(rerun.result()),
                    rerun.result().replay().proven() ? "" : "; replay failed");
        }
        System.out.printf(Locale.ROOT, "worst rerun %.3f of the base plan%n", worst);
    }

    private static List<Crew> oneOfEachDepot(Scenario scenario) {
        Set<String> working = scenario.work().stream().map(Work::crew).collect(Collectors.toSet());
        return scenario.depots().stream()
                .flatMap(depot -> scenario.crews().stream()
                        .filter(crew -> crew.depot().equals(depot.id()) && working.contains(crew.id()))
                        .limit(1))
                .toList();
    }

    private static String again(RerunResult result) {
        return result.changes().stream()
                .filter(change -> change.status() != Status.KEPT)
                .map(DepotChange::depot)
                .collect(Collectors.joining(", "));
    }

    /** Forty cases, all planned anew: ten energy prices, ten pack prices, twenty crews that work more or less. */
    static void sweep(Scenario scenario) {
        Timed<FleetResult> base = base(scenario);
        List<NamedCase> cases = new ArrayList<>();
        for (int i = 0; i < PRICE_CASES; i++) {
            BigDecimal factor = BigDecimal.valueOf(55 + 10L * i, 2);
            cases.add(named(new Change(ChangeKind.ELECTRICITY_PRICE, "", factor)));
            cases.add(named(new Change(
                    ChangeKind.ITEM_PRICE, scenario.packTypes().get(0).id(), factor)));
        }
        List<Crew> crews = scenario.crews();
        for (int i = 0; i < CREW_CASES; i++) {
            Crew crew = crews.get(i * crews.size() / CREW_CASES);
            BigDecimal factor = BigDecimal.valueOf(90 + i, 2);
            cases.add(named(new Change(ChangeKind.WORK_HOURS, crew.id(), factor)));
        }
        Sweep sweep =
                new Sweep("benchmark", Optional.empty(), List.of(), List.of(), List.of(), cases, Optional.empty());
        Timed<Integer> swept =
                Timed.of(() -> SweepRun.run(sweep, scenario, new TreeMap<>(), CaseStore.NONE, SweepProgress.SILENT)
                        .cases()
                        .size());
        System.out.printf(
                Locale.ROOT,
                "sweep of %d cases: %.1f s, %.2f times the base plan%n",
                swept.result(),
                swept.seconds(),
                swept.seconds() / base.seconds());
    }

    private static NamedCase named(Change change) {
        return new NamedCase(change.key(), Purchases.ANEW, List.of(change));
    }

    private static Timed<FleetResult> base(Scenario scenario) {
        Timed<FleetResult> base =
                Timed.of(() -> new FleetPlanner(ProgressListener.SILENT).plan(scenario, new TreeMap<>()));
        System.out.printf(Locale.ROOT, "base plan: %.2f s%n", base.seconds());
        return base;
    }

    /** What came of some work, and how long it took. */
    private record Timed<T>(T result, double seconds) {

        static <T> Timed<T> of(Supplier<T> work) {
            long start = System.nanoTime();
            T result = work.get();
            return new Timed<>(result, (System.nanoTime() - start) / 1e9);
        }
    }
}
