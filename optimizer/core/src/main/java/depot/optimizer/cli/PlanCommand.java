package depot.optimizer.cli;

import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.NothingFitsException;
import depot.optimizer.fleet.RunControl;
import depot.optimizer.plan.Plan;
import depot.optimizer.read.InputFiles;
import depot.optimizer.replay.MonteCarlo;
import depot.optimizer.replay.TrialReport;
import depot.optimizer.report.RunExtras;
import depot.optimizer.report.RunWriter;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.math.BigDecimal;
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
                        + "with a bound: by the model, no plan costs less. The folder of the run holds plan.json, tables, "
                        + "and the pages to read and to print; a run of the same name is replaced when the new one is complete.%n",
        footer = {
            "%nExamples:",
            "  optimizer plan inputs/fennmoor",
            "  optimizer plan inputs/fennmoor --run tight --gap 0.1%%",
            "  optimizer plan inputs/fennmoor --trials 1000",
            "  optimizer plan inputs/fennmoor --out first-try --quiet",
            "  optimizer plan inputs/fennmoor --from outputs/fennmoor/plan --keep-routine 2",
            "  optimizer plan inputs/mine --from outputs/mine/plan --carried-out second"
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

    @Option(
            names = "--run",
            paramLabel = "NAME",
            description = "Name of this run. Usually \"plan\", and \"rerun\" with --from.")
    private String run;

    @Option(
            names = "--from",
            paramLabel = "RUN",
            description =
                    "Plan again after a change of the tables: folder of an earlier run, or its plan.json. What that run "
                            + "bought is there already, and depots that no change touches keep their plan. Where depots share "
                            + "limits, or there are several phases, that is what it bought in its first phase (--carried-out).")
    private Path from;

    @Option(
            names = "--carried-out",
            paramLabel = "PHASE",
            description =
                    "With --from: the last phase of that run that has been carried out. What it bought up to this phase is "
                            + "there; what it planned for later phases is not. Usually its first phase.")
    private String carriedOut;

    @Option(
            names = "--keep-routine",
            paramLabel = "AMOUNT",
            converter = Converters.Amount.class,
            description =
                    "With --from: what it is worth, in money a year, that one load of a charger or the packs of one trip "
                            + "stay as they were, each weekday of each season by itself.")
    private BigDecimal keepRoutine;

    @Option(
            names = "--method",
            paramLabel = "METHOD",
            converter = Converters.PlanMethod.class,
            description =
                    "apart: each depot by itself, joined by prices of what the depots share; whole: all depots as one model, "
                            + "for small fleets. Usually apart.")
    private Method method = Method.APART;

    @Option(
            names = "--trials",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Draw N days for each depot and report the share of them that the plan meets.")
    private Integer trials;

    @Mixin
    private SolveOptions options;

    private boolean interrupted;

    PlanCommand(Terminal terminal, Stages stages) {
        this.terminal = terminal;
        this.stages = stages;
        this.options = new SolveOptions();
    }

    @Override
    public Integer call() throws IOException {
        requireFrom("--keep-routine keeps the routine of", keepRoutine);
        requireFrom("--carried-out names a phase of", carriedOut);
        String name = run != null ? run : from == null ? "plan" : "rerun";
        Path runFolder = OutputPlace.ofRun(Optional.ofNullable(out), folder, name);
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        Scenario scenario = options.applyTo(input.scenario());
        if (from != null) {
            PlanAgain.Asked asked = new PlanAgain.Asked(
                    from, Optional.ofNullable(carriedOut), keepRoutine == null ? 0 : keepRoutine.doubleValue(), method);
            return new PlanAgain(terminal, input, scenario, new PlanProgress(terminal)).from(asked, runFolder);
        }
        RunExtras tables = RunExtras.inputs(InputFiles.read(folder, input.inputHashes()));
        terminal.progress("Planning " + Figures.count(scenario.depots().size(), "depot"));
        KeptAnswers answers = KeptAnswers.open(runFolder, scenario, input.inputHashes(), method);
        Stages.Outcome outcome = solve(input, scenario, answers);
        Optional<TrialReport> drawn = Optional.ofNullable(trials).map(count -> draw(scenario, outcome.plan(), count));
        terminal.progress("Writing " + runFolder);
        RunWriter.write(runFolder, scenario, outcome.plan(), outcome.replay(), outcome.shortages(), tables, drawn);
        ReplaySummary replay = new ReplaySummary(outcome.replay());
        new PlanSummary(scenario, outcome.plan()).lines().forEach(terminal::result);
        if (!interrupted) {
            answers.files().remove();
        }
        replay.lines().forEach(terminal::result);
        drawn.map(TrialSummary::new).ifPresent(summary -> summary.lines().forEach(terminal::result));
        terminal.result(PlanSummary.line(
                "Report", runFolder.toAbsolutePath().normalize().toString()));
        PlanSummary.openGap(outcome.plan()).ifPresent(terminal::problem);
        return replay.status().code();
    }

    private void requireFrom(String option, Object value) {
        if (from == null && value != null) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    option + " an earlier run, and none is given; nothing was written",
                    "Add --from with the folder of that run.");
        }
    }

    private Stages.Outcome solve(ScenarioInput input, Scenario scenario, KeptAnswers answers) {
        long known = answers.files().count();
        if (known > 0) {
            terminal.progress("Going on from a run that was broken off, with %s of depots"
                    .formatted(Figures.count(known, "answer")));
        }
        try (Interruption interruption = Interruption.listen(terminal)) {
            RunControl control = new RunControl(interruption::asked, answers);
            Stages.Outcome outcome =
                    stages.planner().plan(scenario, input.inputHashes(), method, new PlanProgress(terminal), control);
            interrupted = interruption.asked();
            return outcome;
        } catch (NothingFitsException e) {
            // It would be found out again.
            answers.files().remove();
            throw e;
        }
    }

    private TrialReport draw(Scenario scenario, Plan plan, int count) {
        terminal.progress("Drawing %s for each depot".formatted(Figures.count(count, "day")));
        return MonteCarlo.run(scenario, plan, count, scenario.solve().seed());
    }
}
