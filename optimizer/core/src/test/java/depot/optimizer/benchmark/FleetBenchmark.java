package depot.optimizer.benchmark;

import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.generate.CouplingSettings;
import depot.optimizer.generate.CouplingSettings.Kind;
import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.WholeFleet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Fleets that share something, by size and by method: seconds, proven gap, and seconds as a multiple of what it takes to solve every depot's linear
 * relaxation once.
 */
final class FleetBenchmark {

    /** Depots of six crews, one kind of day. */
    private static final GeneratorSettings ONE_DAY = new GeneratorSettings(1, 6, 5, 4, 2, 1, 1);

    private static final GeneratorSettings FOUR_SEASONS = new GeneratorSettings(1, 6, 5, 4, 2, 4, 5);

    /** About 60 % of what would be spent if nothing limited it. */
    private static final OptionalDouble BUDGET = OptionalDouble.of(0.52);

    private static final OptionalDouble BUDGET_OF_PHASE = OptionalDouble.of(0.2);

    private static final double WHOLE_SECONDS = 1200;

    private static final CouplingSettings ONE_BUDGET = new CouplingSettings(1, BUDGET, Set.of(Kind.OPTIONAL));

    private static final CouplingSettings PHASES = new CouplingSettings(3, BUDGET_OF_PHASE, Set.of(Kind.OPTIONAL));

    private static final CouplingSettings EVERYTHING =
            new CouplingSettings(3, BUDGET_OF_PHASE, EnumSet.of(Kind.OPTIONAL, Kind.TIERS, Kind.MOVES, Kind.BASES));

    private record Case(GeneratorSettings size, CouplingSettings coupling, double gap, boolean wholeToo) {}

    private static Map<String, Case> cases() {
        Map<String, Case> cases = new TreeMap<>();
        for (int depots : new int[] {5, 30, 100}) {
            cases.put("budget-" + depots, new Case(ONE_DAY.withDepots(depots), ONE_BUDGET, 0.002, true));
        }
        for (int depots : new int[] {50, 200, 1000}) {
            cases.put("growth-" + depots, new Case(ONE_DAY.withDepots(depots), ONE_BUDGET, 0.002, false));
        }
        for (int depots : new int[] {5, 20, 200}) {
            cases.put("phases-" + depots, new Case(FOUR_SEASONS.withDepots(depots), PHASES, 0.005, false));
            cases.put("everything-" + depots, new Case(FOUR_SEASONS.withDepots(depots), EVERYTHING, 0.01, false));
        }
        return cases;
    }

    private FleetBenchmark() {}

    /** Runs some cases, in the order given. */
    static void run(List<String> names) {
        Map<String, Case> cases = cases();
        for (String name : names) {
            if (!cases.containsKey(name)) {
                throw new IllegalArgumentException(
                        "no fleet " + name + "; there are " + String.join(", ", cases.keySet()));
            }
        }
        System.out.printf(
                "%-16s %-6s %9s %8s %9s %13s %13s %8s %8s%n",
                "fleet", "method", "seconds", "x apart", "x linear", "cost", "bound", "gap", "heap MB");
        for (String name : names) {
            measure(name, cases.get(name));
        }
    }

    private static void measure(String name, Case fleet) {
        Scenario drawn = FleetGenerator.generate(fleet.size(), fleet.coupling(), 1);
        SolveSettings usual = drawn.solve();
        Scenario scenario = drawn.withSolve(new SolveSettings(
                fleet.gap(),
                usual.nodeLimit(),
                usual.timeLimitSeconds(),
                usual.threads(),
                usual.seed(),
                usual.handoverMinutes()));
        double linear = linearSeconds(scenario);
        double apart = row(name, "apart", () -> byPrices(scenario), linear, 0);
        if (fleet.wholeToo()) {
            // Whole models are far from the gap when their time is up; nodes would end them before.
            Scenario unhurried = drawn.withSolve(new SolveSettings(
                    fleet.gap(),
                    Integer.MAX_VALUE,
                    WHOLE_SECONDS,
                    usual.threads(),
                    usual.seed(),
                    usual.handoverMinutes()));
            row(name, "whole", () -> asOneModel(unhurried), linear, apart);
        }
    }

    /** What a method comes to, or why it comes to nothing. */
    @FunctionalInterface
    private interface Search {
        Certificate certificate() throws NoPlanException;
    }

    private static Certificate byPrices(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>(), Method.APART)
                .plan()
                .certificate();
    }

    /** The model alone: its plans are not replayed, and no days tightened, which would only take longer. */
    private static Certificate asOneModel(Scenario scenario) {
        List<DepotRollout> rollouts = rollouts(scenario);
        WholeFleet.Solution solution = new WholeFleet(
                        scenario.name(),
                        rollouts,
                        SharedLimits.of(scenario),
                        new QuantityPrices(scenario),
                        rollouts.stream().map(WholeFleet::terms).toList())
                .solve(scenario.solve());
        return Certificate.of(
                solution.cost(), solution.bound(), scenario.solve().relativeGap());
    }

    private static double row(String name, String method, Search search, double linear, double apart) {
        long start = System.nanoTime();
        String found;
        try {
            Certificate certificate = search.certificate();
            found = String.format(
                    Locale.ROOT,
                    "%13.2f %13.2f %7.3f%%",
                    certificate.cost(),
                    certificate.bound(),
                    100 * certificate.gap());
        } catch (NoPlanException e) {
            found = String.format("%13s %13s %8s", "no plan", "", "");
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%-16s %-6s %9.1f %8.1f %9.1f %s %8d%n",
                name,
                method,
                seconds,
                apart == 0 ? 1 : seconds / apart,
                seconds / linear,
                found,
                (runtime.totalMemory() - runtime.freeMemory()) >> 20);
        return seconds;
    }

    private static List<DepotRollout> rollouts(Scenario scenario) {
        DepotProblems problems = new DepotProblems(scenario);
        return scenario.depots().stream().map(problems::rollout).toList();
    }

    /** The floor: no method that looks at every depot can be faster. */
    private static double linearSeconds(Scenario scenario) {
        List<DepotRollout> rollouts = rollouts(scenario);
        ExecutorService threads = Executors.newFixedThreadPool(scenario.solve().threads());
        long start = System.nanoTime();
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (DepotRollout rollout : rollouts) {
                futures.add(threads.submit(() -> new DepotSolver(rollout, SharedPrices.NONE, 0).linear()));
            }
            for (Future<?> future : futures) {
                future.get();
            }
        } catch (InterruptedException | java.util.concurrent.ExecutionException e) {
            throw new IllegalStateException(e);
        } finally {
            threads.shutdownNow();
        }
        return (System.nanoTime() - start) / 1e9;
    }
}
