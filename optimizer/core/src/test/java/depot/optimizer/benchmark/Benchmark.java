package depot.optimizer.benchmark;

import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/**
 * Measures how long plans take and how good they are proven to be. Not a test: times depend on the machine and on what else it does, so compare
 * figures of one run only.
 *
 * <p>Arguments: {@code depot} (eight single depots), {@code apart N} (N generated depots that share nothing), {@code fleet CASE...}
 * (fleets that share something, {@link FleetBenchmark}), {@code scenario FOLDER}, {@code rerun FOLDER}
 * (planning again after one crew changes), {@code sweep FOLDER} (forty cases), {@code shared-sweep N} (eight
 * cases of N generated depots with one budget, {@link SharedSweep}).
 */
public final class Benchmark {

    private static final String CASES =
            "; there are depot, apart N, fleet CASE..., shared-sweep N, and scenario, rerun or sweep FOLDER";

    private Benchmark() {}

    /** Runs one case. */
    public static void main(String[] arguments) {
        String name = arguments.length > 0 ? arguments[0] : "depot";
        switch (name) {
            case "depot" -> singleDepots();
            case "apart" -> apart(Integer.parseInt(second(arguments)));
            case "fleet" ->
                FleetBenchmark.run(
                        arguments.length > 1
                                ? List.of(arguments).subList(1, arguments.length)
                                : List.of("budget-5", "budget-30", "growth-50"));
            case "scenario" -> each(load(Path.of(second(arguments))));
            case "rerun" -> Replanning.afterOneCrew(load(Path.of(second(arguments))));
            case "sweep" -> Replanning.sweep(load(Path.of(second(arguments))));
            case "shared-sweep" -> SharedSweep.run(arguments.length > 1 ? Integer.parseInt(arguments[1]) : 12);
            default -> throw new IllegalArgumentException("no case " + name + CASES);
        }
    }

    private static String second(String[] arguments) {
        if (arguments.length < 2) {
            throw new IllegalArgumentException(arguments[0] + " wants to know of what" + CASES);
        }
        return arguments[1];
    }

    private static Scenario load(Path folder) {
        return ScenarioLoader.load(folder)
                .scenario()
                .orElseThrow(() -> new IllegalArgumentException(folder + " has errors; run the check command on it"));
    }

    private static void singleDepots() {
        List<Double> seconds = new ArrayList<>();
        GeneratorSettings one = GeneratorSettings.DEFAULT.withDepots(1);
        header();
        for (int seed = 1; seed <= 8; seed++) {
            Scenario scenario = FleetGenerator.generate(one, seed);
            seconds.add(measure("seed " + seed, scenario, scenario.depots().get(0)));
        }
        Collections.sort(seconds);
        System.out.printf(Locale.ROOT, "median solve %.2f s%n", (seconds.get(3) + seconds.get(4)) / 2);
    }

    private static void each(Scenario scenario) {
        header();
        scenario.depots().forEach(depot -> measure(depot.id(), scenario, depot));
    }

    private static void header() {
        System.out.printf(
                "%-14s %6s %6s %5s %4s %8s %8s %8s %12s %12s %8s %s%n",
                "case",
                "vars",
                "rows",
                "kinds",
                "bind",
                "build s",
                "solve s",
                "replay s",
                "cost",
                "bound",
                "gap",
                "stopped by");
    }

    private static double measure(String name, Scenario scenario, Depot depot) {
        long start = System.nanoTime();
        DepotProblem problem = new DepotProblems(scenario).of(depot);
        long built = System.nanoTime();
        DepotPlan plan = new DepotSolver(problem).solve();
        long solved = System.nanoTime();
        DepotReplay replay = FleetReplay.runDepot(scenario, plan);
        long replayed = System.nanoTime();
        SolveStop stop = plan.stop();
        Certificate certificate = stop.certificate();
        System.out.printf(
                Locale.ROOT,
                "%-14s %6d %6d %5d %4d %8.2f %8.2f %8.2f %12.2f %12.2f %7.2f%% %s%n",
                name,
                stop.variables(),
                stop.constraints(),
                stop.kindsOfDay(),
                stop.bindingDays(),
                (built - start) / 1e9,
                (solved - built) / 1e9,
                (replayed - solved) / 1e9,
                certificate.cost(),
                certificate.bound(),
                100 * certificate.gap(),
                stop.reason() + (replay.proven() ? "" : "; replay failed"));
        return (solved - built) / 1e9;
    }

    private static void apart(int depots) {
        Scenario scenario = FleetGenerator.generate(GeneratorSettings.DEFAULT.withDepots(depots), 1);
        long start = System.nanoTime();
        Certificate certificate = new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>())
                .plan()
                .certificate();
        double seconds = (System.nanoTime() - start) / 1e9;
        Runtime runtime = Runtime.getRuntime();
        System.out.printf(
                Locale.ROOT,
                "%d depots: %.1f s, %.2f s a depot, cost %.2f, bound %.2f, gap %.2f %%, Java heap in use %d MB%n",
                depots,
                seconds,
                seconds / depots,
                certificate.cost(),
                certificate.bound(),
                100 * certificate.gap(),
                (runtime.totalMemory() - runtime.freeMemory()) >> 20);
    }
}
