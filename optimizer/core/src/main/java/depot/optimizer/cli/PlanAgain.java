package depot.optimizer.cli;

import depot.optimizer.dictionary.Table;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.report.RerunWriter;
import depot.optimizer.report.RunExtras;
import depot.optimizer.report.table.RerunFigures;
import depot.optimizer.report.text.Figures;
import depot.optimizer.rerun.RerunPlanner;
import depot.optimizer.rerun.RerunResult;
import depot.optimizer.rerun.input.InputChange;
import depot.optimizer.rerun.input.InputChanges;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** {@code optimizer plan --from}: plans changed tables from where an earlier run stands. */
final class PlanAgain {

    private final Terminal terminal;
    private final ScenarioInput input;
    private final Scenario scenario;
    private final RunExtras tables;

    /**
     * @param scenario of the input, to be solved with the settings asked for
     * @param tables of the input, as files of the run
     */
    PlanAgain(Terminal terminal, ScenarioInput input, Scenario scenario, RunExtras tables) {
        this.terminal = terminal;
        this.input = input;
        this.scenario = scenario;
        this.tables = tables;
    }

    /**
     * Plans, writes the run and prints what it changes; returns the exit status.
     *
     * @param routineWeight money a year for each line of the routine that changes, 0: none
     */
    int from(Path named, Path runFolder, double routineWeight, ProgressListener progress) throws IOException {
        EarlierRunInput earlier = EarlierRunInput.load(named, scenario);
        requireOther(earlier.folder(), runFolder);
        List<InputChange> inputs = InputChanges.between(earlier.inputs(), input.folder());
        terminal.progress(
                "Planning %s from %s".formatted(Figures.count(scenario.depots().size(), "depot"), named));
        RerunResult result = RerunPlanner.plan(earlier.run(), scenario, input.inputHashes(), routineWeight, progress);
        RerunRemarks.of(result).forEach(terminal::note);
        RerunFigures figures = RerunFigures.of(result, inputs);
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

    /**
     * Lets scenarios pass whose depots nothing couples: others cannot keep the plan of one depot while another changes.
     *
     * @throws UserError otherwise
     */
    static void requireApart(Scenario scenario) {
        List<String> coupling =
                SharedTables.of(scenario).stream().map(Table::file).toList();
        if (!coupling.isEmpty()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s: plans that start from a run leave depots as they are, and these tables couple them; nothing was written"
                            .formatted(String.join(", ", coupling)),
                    "Plan without --from, or take the tables out of the folder.");
        }
        if (!scenario.visits().isEmpty()) {
            RouteStop stop = scenario.visits().get(0);
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "stops.csv: plans that start from a run leave depots as they are, and %s visits %s, whose bays it may use; nothing was written"
                            .formatted(stop.crew(), stop.place()),
                    "Plan without --from, or give such stops the name of a site.");
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
