package depot.optimizer.cli;

import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import picocli.CommandLine.Option;

/** Options that take the place of the scenario's own solve settings. */
final class SolveOptions {

    @Option(
            names = "--gap",
            paramLabel = "SHARE",
            converter = Converters.Share.class,
            description = "Stop when the plan is proven to cost at most this much more than the best possible one, "
                    + "such as 0.005 or 0.5%%.")
    private Double gap;

    @Option(
            names = "--nodes",
            paramLabel = "N",
            converter = Converters.LargeCount.class,
            description =
                    "Look at no more than N branches for each solve of a depot. This limit repeats from run to run.")
    private Long nodes;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Plan N depots side by side.")
    private Integer threads;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the solver's tie-breaking.")
    private Integer seed;

    @Option(
            names = "--time-limit",
            paramLabel = "SECONDS",
            converter = Converters.Seconds.class,
            description = "A backstop for each depot. A plan that is cut off by the clock may differ from run to run.")
    private Double timeLimit;

    /** The scenario with the settings that were given here, and its own where none were. */
    Scenario applyTo(Scenario scenario) {
        SolveSettings own = scenario.solve();
        return scenario.withSolve(new SolveSettings(
                gap == null ? own.relativeGap() : gap,
                nodes == null ? own.nodeLimit() : nodes,
                timeLimit == null ? own.timeLimitSeconds() : timeLimit,
                threads == null ? own.threads() : threads,
                seed == null ? own.seed() : seed,
                own.handoverMinutes()));
    }
}
