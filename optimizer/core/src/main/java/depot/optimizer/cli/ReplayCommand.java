package depot.optimizer.cli;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.MonteCarlo;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.TrialReport;
import depot.optimizer.report.PlanJson;
import depot.optimizer.report.text.Figures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code optimizer replay}: proves a plan again, or tries it against other tables. */
@Command(
        name = "replay",
        header = "Runs a plan minute by minute and says whether every day is met.",
        description =
                "%nShares nothing with the model that made the plan. With the plan's own scenario it proves the plan "
                        + "again; with changed tables it shows whether the plan would still hold. With --trials it draws the "
                        + "energy need of every stop from its spread, and lets one trip in four come back late, by 15 "
                        + "minutes on average.%n",
        footer = {
            "%nExamples:",
            "  optimizer replay inputs/fennmoor outputs/fennmoor/plan",
            "  optimizer replay inputs/fennmoor outputs/fennmoor/plan --trials 1000 --seed 7"
        })
final class ReplayCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "Folder with the scenario's tables.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "PLAN", description = "Folder of a run, or its plan.json.")
    private Path planFile;

    @Option(
            names = "--trials",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Draw N days for each depot and print the share of them that the plan meets.")
    private Integer trials;

    @Option(names = "--seed", paramLabel = "N", description = "Seed of the draws. Usually the scenario's.")
    private Integer seed;

    ReplayCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        Path file = Files.isDirectory(planFile) ? planFile.resolve(PlanJson.FILE_NAME) : planFile;
        Plan plan = PlanJson.read(file);
        boolean changed = noteChanges(input, plan);
        String depots = Figures.count(
                plan.depots().stream().map(DepotPlan::depot).distinct().count(), "depot");
        terminal.progress("Replaying " + depots);
        ReplayReport report = FleetReplay.run(input.scenario(), plan);
        ReplaySummary summary = new ReplaySummary(report);
        terminal.result("%s: %s".formatted(plan.scenario(), depots));
        StillHolds holds = new StillHolds(input.scenario(), plan, report);
        if (changed) {
            holds.lines().forEach(terminal::result);
        }
        summary.lines().forEach(terminal::result);
        Optional.ofNullable(trials).ifPresent(count -> draw(input, plan, count));
        return holds.status(summary.status()).code();
    }

    /** A plan is often tried against other tables on purpose, but nobody should do so unawares. Returns whether there are any. */
    private boolean noteChanges(ScenarioInput input, Plan plan) {
        Set<String> changed = new TreeSet<>(input.inputHashes().keySet());
        changed.addAll(plan.inputHashes().keySet());
        changed.removeIf(file ->
                Objects.equals(input.inputHashes().get(file), plan.inputHashes().get(file)));
        if (!changed.isEmpty()) {
            terminal.note("These tables are not the ones that the plan was made from: " + String.join(", ", changed));
        }
        return !changed.isEmpty();
    }

    private void draw(ScenarioInput input, Plan plan, int count) {
        terminal.progress("Drawing %s for each depot".formatted(Figures.count(count, "day")));
        int from = seed == null ? input.scenario().solve().seed() : seed;
        TrialReport report = MonteCarlo.run(input.scenario(), plan, count, from);
        new TrialSummary(report).lines().forEach(terminal::result);
    }
}
