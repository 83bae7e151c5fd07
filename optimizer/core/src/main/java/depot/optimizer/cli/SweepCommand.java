package depot.optimizer.cli;

import depot.optimizer.check.Finding;
import depot.optimizer.report.CaseFiles;
import depot.optimizer.report.SweepWriter;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.SweepResult;
import depot.optimizer.sweep.SweepRun;
import depot.optimizer.sweep.spec.LoadedSweep;
import depot.optimizer.sweep.spec.Sweep;
import depot.optimizer.sweep.spec.SweepLoader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code optimizer sweep}: plans a scenario many times with something changed, and writes what each change does. */
@Command(
        name = "sweep",
        header = "Shows what changes of prices, demand, packs, crews and depots do to the plan and its cost.",
        description =
                "%nPlans the scenario once, then again with each change that SWEEP asks for: one at a time, along one change, two "
                        + "together, along budgets, named cases, and what happens when a charger fails, packs are lost or crews are "
                        + "late. Only depots that a change touches are planned again, and the whole fleet where depots share something. "
                        + "inputs/SWEEPS.md explains the file.%n%n"
                        + "The results are tables and a page, sweep.html; a sweep of the same name is replaced when the new one is "
                        + "complete. One that is interrupted keeps what it has finished: the same command goes on from there.%n",
        footer = {
            "%nExamples:",
            "  optimizer sweep inputs/starter inputs/starter/sweep.json",
            "  optimizer sweep inputs/fennmoor inputs/fennmoor/sweep.json --run coarse --gap 5%%",
            "%nThe exit status is 0 when every plan was found and its replay agrees, whether or not all days of changed",
            "scenarios are met; 3 when the base plan itself has shortages; 4 when a case has no plan, other than that a",
            "frontier's budget is too small for any."
        })
final class SweepCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "Folder with the scenario's tables.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "SWEEP", description = "JSON file that says what to change.")
    private Path sweepFile;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder of this sweep. Usually outputs/<scenario>/<sweep> in the program's folder.")
    private Path out;

    @Option(names = "--run", paramLabel = "NAME", description = "Name of this sweep. Usually the one that SWEEP gives.")
    private String run;

    @Mixin
    private SolveOptions options;

    SweepCommand(Terminal terminal) {
        this.terminal = terminal;
        this.options = new SolveOptions();
    }

    @Override
    public Integer call() throws IOException {
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        terminal.progress("Reading " + sweepFile);
        LoadedSweep loaded = SweepLoader.load(sweepFile, input.scenario());
        Sweep sweep = sound(loaded);
        Path runFolder = OutputPlace.ofRun(Optional.ofNullable(out), folder, run == null ? sweep.name() : run);
        SweepWriter.requireReplaceable(runFolder);
        SortedMap<String, String> hashes = new TreeMap<>(input.inputHashes());
        hashes.put(sweepFile.getFileName().toString(), loaded.hash());
        SweepResult result = swept(sweep, options.applyTo(input.scenario()), hashes, runFolder);
        SweepSummary summary = new SweepSummary(result);
        summary.lines().forEach(terminal::result);
        terminal.result(PlanSummary.line(
                "Report",
                runFolder.resolve(SweepWriter.PAGE).toAbsolutePath().normalize().toString()));
        return summary.status().code();
    }

    private SweepResult swept(Sweep sweep, Scenario scenario, SortedMap<String, String> hashes, Path runFolder)
            throws IOException {
        try (CaseFiles draft = CaseFiles.open(runFolder)) {
            if (draft.count() > 0) {
                terminal.note("Going on from an interrupted sweep: " + Figures.count(draft.count(), "plan")
                        + " kept in " + draft.folder());
            }
            TimeLeft timeLeft = new TimeLeft(System::nanoTime);
            SweepResult result = SweepRun.run(
                    sweep,
                    scenario,
                    hashes,
                    draft,
                    (what, done, total) -> terminal.progress(
                            "Planned %d of %d, %s: %s".formatted(done, total, timeLeft.words(done, total), what)));
            terminal.progress("Writing " + runFolder);
            SweepWriter.write(runFolder, result);
            draft.remove();
            return result;
        }
    }

    private Sweep sound(LoadedSweep loaded) {
        for (Finding finding : loaded.findings()) {
            terminal.problem(ScenarioInput.describe(Path.of(""), finding));
        }
        return loaded.sweep()
                .orElseThrow(() -> new UserError(
                        ExitStatus.BAD_INPUT,
                        "%s in %s; nothing was written"
                                .formatted(Figures.count(loaded.findings().size(), "error"), sweepFile),
                        ""));
    }
}
