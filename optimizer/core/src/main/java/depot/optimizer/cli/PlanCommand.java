package depot.optimizer.cli;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.MonteCarlo;
import depot.optimizer.replay.TrialReport;
import depot.optimizer.report.RunWriter;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code optimizer plan}: solves, replays, writes the plan and prints its summary. */
@Command(
        name = "plan",
        header = "Makes a plan, proves it by replaying every day, and writes it.",
        description =
                "%nThe plan says what to buy, where each charger is plugged in, and what to charge when. It comes "
                        + "with a bound: no plan that keeps the rules costs less. The folder of the run holds plan.json, tables, "
                        + "and the pages to read and to print; a run of the same name is replaced when the new one is complete.%n",
        footer = {
            "%nExamples:",
            "  optimizer plan inputs/fennmoor",
            "  optimizer plan inputs/fennmoor --run tight --gap 0.1%%",
            "  optimizer plan inputs/fennmoor --trials 1000",
            "  optimizer plan inputs/fennmoor --out first-try --quiet"
        })
final class PlanCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Stages stages;

    @Parameters(paramLabel = "SCENARIO", description = "Folder with the scenario's tables.")
    private Path folder;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder of this run. Usually outputs/<scenario>/<run> in the program's folder.")
    private Path out;

    @Option(names = "--run", paramLabel = "NAME", description = "Name of this run. Usually \"plan\".")
    private String run = "plan";

    @Option(
            names = "--trials",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Draw N days for each depot and report the share of them that the plan meets.")
    private Integer trials;

    @Mixin
    private SolveOptions options;

    PlanCommand(Terminal terminal, Stages stages) {
        this.terminal = terminal;
        this.stages = stages;
        this.options = new SolveOptions();
    }

    @Override
    public Integer call() throws IOException {
        Path runFolder = OutputPlace.ofRun(Optional.ofNullable(out), folder, run);
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        NotYetPlanned.refuse(input, terminal);
        Scenario scenario = options.applyTo(input.scenario());
        terminal.progress("Planning " + Figures.count(scenario.depots().size(), "depot"));
        Stages.Outcome outcome = stages.planner().plan(scenario, input.inputHashes(), this::depotDone);
        Optional<TrialReport> drawn = Optional.ofNullable(trials).map(count -> draw(scenario, outcome.plan(), count));
        terminal.progress("Writing " + runFolder);
        RunWriter.write(runFolder, scenario, outcome.plan(), outcome.replay(), outcome.shortages(), drawn);
        ReplaySummary replay = new ReplaySummary(outcome.replay());
        new PlanSummary(scenario, outcome.plan()).lines().forEach(terminal::result);
        replay.lines().forEach(terminal::result);
        drawn.map(TrialSummary::new).ifPresent(summary -> summary.lines().forEach(terminal::result));
        terminal.result(PlanSummary.line(
                "Report", runFolder.toAbsolutePath().normalize().toString()));
        tellOpenGap(outcome.plan());
        return replay.status().code();
    }

    private TrialReport draw(Scenario scenario, Plan plan, int count) {
        terminal.progress("Drawing %s for each depot".formatted(Figures.count(count, "day")));
        return MonteCarlo.run(scenario, plan, count, scenario.solve().seed());
    }

    /** Part of the result, so that quiet runs tell it as well. */
    private void tellOpenGap(Plan plan) {
        if (!plan.certificate().proven()) {
            terminal.problem(("The limits ended the search at a gap of %s, before the %s that was asked for. "
                            + "--nodes and --time-limit allow more work.")
                    .formatted(
                            PlanSummary.percent(plan.certificate().gap()),
                            PlanSummary.percent(plan.settings().relativeGap())));
        }
    }

    private void depotDone(String depot, int done, int total, Certificate certificate) {
        terminal.progress("Planned %d of %d depots: %s costs %s, proven to %s"
                .formatted(
                        done, total, depot, Figures.read(certificate.cost(), 0), Figures.percent(certificate.gap())));
    }
}
