package depot.optimizer.benchmark;

import com.sun.management.OperatingSystemMXBean;
import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.generate.CouplingSettings;
import depot.optimizer.generate.CouplingSettings.Kind;
import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.plan.Certificate;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.sweep.CaseResult;
import depot.optimizer.sweep.CaseStore;
import depot.optimizer.sweep.FleetOutcome;
import depot.optimizer.sweep.SweepResult;
import depot.optimizer.sweep.SweepRun;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.Sweep.NamedCase;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** Times a sweep of a fleet whose depots share one budget, as a multiple of its base plan. Cases are worked on one after the other, by one thread each, as the base is. */
final class SharedSweep {

    /** Depots of six crews, one kind of day, and about 60 % of what would be spent if nothing limited it. */
    private static final GeneratorSettings SIZE = new GeneratorSettings(1, 6, 5, 4, 2, 1, 1);

    private static final CouplingSettings ONE_BUDGET =
            new CouplingSettings(1, OptionalDouble.of(0.52), Set.of(Kind.OPTIONAL));

    private static final double GAP = 0.005;

    private SharedSweep() {}

    /** Four budgets, two prices, and one depot with another crew or with more work. */
    static void run(int depots) {
        Scenario scenario = scenario(depots);
        String crew = scenario.crews().get(0).id();
        String last = scenario.crews().get(scenario.crews().size() - 1).id();
        List<Change> changes = List.of(
                new Change(ChangeKind.ALL_BUDGETS, "", new BigDecimal("0.9")),
                new Change(ChangeKind.ALL_BUDGETS, "", new BigDecimal("0.97")),
                new Change(ChangeKind.ALL_BUDGETS, "", new BigDecimal("1.03")),
                new Change(ChangeKind.ALL_BUDGETS, "", new BigDecimal("1.1")),
                new Change(ChangeKind.ITEM_PRICE, scenario.chargerTypes().get(0).id(), new BigDecimal("0.8")),
                new Change(ChangeKind.CREW_COPIES, crew, BigDecimal.ONE),
                new Change(ChangeKind.WORK_HOURS, last, new BigDecimal("1.1")),
                new Change(ChangeKind.ELECTRICITY_PRICE, "", new BigDecimal("1.3")));
        List<NamedCase> cases = new ArrayList<>();
        changes.forEach(change -> cases.add(new NamedCase(change.key(), Purchases.ANEW, List.of(change))));
        List<Long> ends = new ArrayList<>(List.of(processor()));
        Sweep sweep =
                new Sweep("benchmark", Optional.empty(), List.of(), List.of(), List.of(), cases, Optional.empty());
        SweepResult result = SweepRun.run(
                sweep, scenario, new TreeMap<>(), CaseStore.NONE, (what, done, total) -> ends.add(processor()));
        double total = (processor() - ends.get(0)) / 1e9;
        double base = seconds(ends, 1);
        System.out.printf("%-34s %9s %7s %13s %13s %8s%n", "case", "seconds", "x base", "cost", "bound", "gap");
        row("base", base, base, result.base());
        for (int c = 0; c < result.cases().size(); c++) {
            CaseResult found = result.cases().get(c);
            row(
                    found.sweepCase().name(),
                    seconds(ends, c + 2),
                    base,
                    found.fleet().orElseThrow());
        }
        System.out.printf(
                Locale.ROOT,
                "%d depots, sweep of %d cases: %.1f s, %.2f times the base plan%n",
                depots,
                cases.size(),
                total,
                total / base);
    }

    /** Of this process, in nanoseconds: what else the machine does matters less than with the clock. */
    private static long processor() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private static double seconds(List<Long> ends, int step) {
        return (ends.get(step) - ends.get(step - 1)) / 1e9;
    }

    private static void row(String name, double seconds, double base, FleetOutcome fleet) {
        Certificate found = fleet.plan().certificate();
        System.out.printf(
                Locale.ROOT,
                "%-34s %9.1f %7.2f %13.2f %13.2f %7.3f%%%s%n",
                name,
                seconds,
                seconds / base,
                found.cost(),
                found.bound(),
                100 * found.gap(),
                fleet.proven() ? "" : " replay failed");
    }

    private static Scenario scenario(int depots) {
        Scenario drawn = FleetGenerator.generate(SIZE.withDepots(depots), ONE_BUDGET, 1);
        SolveSettings usual = drawn.solve();
        return drawn.withSolve(new SolveSettings(
                GAP, usual.nodeLimit(), usual.timeLimitSeconds(), 1, usual.seed(), usual.handoverMinutes()));
    }
}
