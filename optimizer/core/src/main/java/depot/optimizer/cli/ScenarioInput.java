package depot.optimizer.cli;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.SortedMap;

/**
 * A scenario that a command works on, read and found right.
 *
 * @param folder as the user named it
 * @param inputHashes SHA-256 of each file, by name
 * @param notices how many findings were worth a notice
 */
record ScenarioInput(Path folder, Scenario scenario, SortedMap<String, String> inputHashes, long notices) {

    /**
     * Reads a scenario and prints every finding.
     *
     * @throws UserError if a finding is an error
     */
    static ScenarioInput load(Path folder, Terminal terminal) {
        terminal.progress("Reading " + folder);
        LoadedScenario loaded = ScenarioLoader.load(folder);
        for (Finding finding : loaded.findings()) {
            if (finding.severity() == Severity.ERROR) {
                terminal.problem(describe(folder, finding));
            } else {
                terminal.note(describe(folder, finding));
            }
        }
        long errors = count(loaded, Severity.ERROR);
        Scenario scenario = loaded.scenario()
                .orElseThrow(() -> new UserError(
                        ExitStatus.BAD_INPUT,
                        "%s in %s; nothing was written".formatted(Figures.count(errors, "error"), folder),
                        ""));
        return new ScenarioInput(folder, scenario, loaded.inputHashes(), count(loaded, Severity.NOTICE));
    }

    private static long count(LoadedScenario loaded, Severity severity) {
        return loaded.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .count();
    }

    /** One line in the form that editors take for a place in a file: file, line, column, then the words. */
    static String describe(Path folder, Finding finding) {
        StringBuilder line = new StringBuilder(folder.resolve(finding.file()).toString());
        if (finding.line() > 0) {
            line.append(':').append(finding.line());
        }
        if (!finding.column().isEmpty()) {
            line.append(':').append(finding.column());
        }
        line.append(finding.severity() == Severity.ERROR ? ": error: " : ": notice: ");
        line.append(finding.message());
        if (!finding.value().isEmpty()) {
            line.append(" [").append(finding.value()).append(']');
        }
        if (!finding.hint().isEmpty()) {
            line.append("; hint: ").append(finding.hint());
        }
        return line.toString();
    }
}
