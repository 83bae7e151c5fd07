package depot.optimizer.cli;

import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.read.InputFiles;
import depot.optimizer.report.RerunWriter;
import depot.optimizer.report.RunExtras;
import depot.optimizer.report.table.RerunFigures;
import depot.optimizer.report.text.Figures;
import depot.optimizer.rerun.EarlierRun;
import depot.optimizer.rerun.RerunPlanner;
import depot.optimizer.rerun.RerunResult;
import depot.optimizer.rerun.SharedRerun;
import depot.optimizer.rerun.input.InputChange;
import depot.optimizer.rerun.input.InputChanges;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** {@code optimizer plan --from}: plans changed tables from where an earlier run stands. */
final class PlanAgain {

    private final Terminal terminal;
    private final ScenarioInput input;
    private final Scenario scenario;
    private final ProgressListener progress;

    /**
     * What was asked for.
     *
     * @param run the earlier run, as the user named it
     * @param carriedOut the last of its phases that has been carried out, empty: the first
     * @param routineWeight money a year for each line of the routine that changes, 0: none
     * @param method how a fleet is planned that shares something
     */
    record Asked(Path run, Optional<String> carriedOut, double routineWeight, Method method) {}

    /**
     * @param scenario of the input, to be solved with the settings asked for
     */
    PlanAgain(Terminal terminal, ScenarioInput input, Scenario scenario, ProgressListener progress) {
        this.terminal = terminal;
        this.input = input;
        this.scenario = scenario;
        this.progress = progress;
    }

    /** Plans, writes the run and prints what it changes; returns the exit status. */
    int from(Asked asked, Path runFolder) throws IOException {
        EarlierRunInput earlier = EarlierRunInput.load(asked.run(), scenario, asked.carriedOut());
        requireOther(earlier.folder(), runFolder);
        List<InputChange> inputs = InputChanges.between(earlier.asked(), input.folder());
        terminal.progress(
                "Planning %s from %s".formatted(Figures.count(scenario.depots().size(), "depot"), asked.run()));
        SortedMap<String, byte[]> given = InputFiles.read(input.folder(), input.inputHashes());
        if (SharedRerun.concerns(earlier.run(), scenario)) {
            return shared(asked, earlier.run(), inputs, given, runFolder);
        }
        RerunResult result =
                RerunPlanner.plan(earlier.run(), scenario, input.inputHashes(), asked.routineWeight(), progress);
        return write(RerunFigures.of(result, inputs), RunExtras.inputs(given), runFolder);
    }

    private int shared(
            Asked asked, EarlierRun earlier, List<InputChange> inputs, SortedMap<String, byte[]> given, Path runFolder)
            throws IOException {
        requireOrder(earlier, asked.run());
        SharedRerun rerun = new SharedRerun(earlier, scenario);
        StandingInput there = StandingInput.of(given, input.scenario(), rerun.tables());
        RerunResult result = rerun.plan(
                there.scenario().withSolve(scenario.solve()),
                there.hashes(),
                asked.routineWeight(),
                asked.method(),
                progress);
        return write(
                RerunFigures.of(result, inputs),
                there.hashes().equals(input.inputHashes())
                        ? RunExtras.inputs(given)
                        : RunExtras.inputs(there.files(), given),
                runFolder);
    }

    private int write(RerunFigures figures, RunExtras tables, Path runFolder) throws IOException {
        RerunResult result = figures.result();
        RerunRemarks.of(result).forEach(terminal::note);
        terminal.progress("Writing " + runFolder);
        RerunWriter.write(runFolder, figures, tables);
        ReplaySummary replay = new ReplaySummary(result.replay());
        new RerunSummary(figures).lines().forEach(terminal::result);
        replay.lines().forEach(terminal::result);
        terminal.result(PlanSummary.line(
                "Report",
                runFolder.resolve(RerunWriter.PAGE).toAbsolutePath().normalize().toString()));
        PlanSummary.openGap(result.plan()).ifPresent(terminal::problem);
        return replay.status().code();
    }

    /** Of the phases that have been carried out only the last may still be to come, as the first of all: pieces cannot be there before they were bought. */
    private void requireOrder(EarlierRun earlier, Path named) {
        List<String> now = scenario.coupling().phases().stream().map(Phase::id).toList();
        List<String> done = earlier.phasesCarriedOut();
        List<String> past = done.stream()
                .filter(now::contains)
                .filter(phase -> !phase.equals(now.get(0)) || !phase.equals(earlier.carriedOut()))
                .toList();
        if (!past.isEmpty()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "phases.csv: %s of %s %s been carried out, and planning begins with %s; nothing was written"
                            .formatted(String.join(", ", past), named, past.size() == 1 ? "has" : "have", now.get(0)),
                    "Take the rows of past phases out of phases.csv, so that the phase carried out last, or the next one, begins in year 0.");
        }
    }

    /** The earlier run says what is there: it must not go when the new one comes. */
    private static void requireOther(Path earlier, Path runFolder) throws IOException {
        boolean same = Files.exists(runFolder) && Files.isSameFile(earlier, runFolder);
        if (same) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s is the run to start from, and would be replaced; nothing was written".formatted(runFolder),
                    "Give the new run another name with --run, or another folder with --out.");
        }
    }
}
