package depot.optimizer.cli;

import depot.optimizer.report.compare.RunSet;
import depot.optimizer.report.text.Figures;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code optimizer compare}: plans side by side. */
@Command(
        name = "compare",
        header = "Sets plans side by side: purchases, costs by kind and by year, present value, margins.",
        description =
                "%nTakes the folders of runs that plan wrote, and compares every one with the first: what differs in what is "
                        + "bought, what it costs, when it is paid, and how near to its limits it runs. The comparison goes to a "
                        + "folder of its own: compare.html to read and print, compare.csv, and compare.xlsx. Runs in different "
                        + "currencies, or over different numbers of years, are not comparable by their amounts; they are "
                        + "refused unless --mixed is given.%n",
        footer = {
            "%nExamples:",
            "  optimizer compare outputs/fennmoor/plan outputs/fennmoor/tight",
            "  optimizer compare outputs/fennmoor/* --name all-of-them"
        })
final class CompareCommand implements Callable<Integer> {

    /** Stands where the name of a scenario does for runs. */
    private static final Path COMPARISONS = Path.of("comparisons");

    private final Terminal terminal;

    @Parameters(
            paramLabel = "RUN",
            arity = "1..*",
            description = "Folders of two or more runs; the first is the one that the others are compared with.")
    private List<Path> runs;

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "Name of the comparison. Usually \"comparison\"; one of the same name is replaced.")
    private String name = "comparison";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder of the comparison. Usually outputs/comparisons/<name> in the program's folder.")
    private Path out;

    @Option(
            names = "--mixed",
            description = "Go on although currencies or horizons differ. A warning is printed and stands on the page.")
    private boolean mixed;

    CompareCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (runs.size() < 2) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "compare takes two runs or more, and got one",
                    "Give the folders of the runs, such as outputs/fennmoor/plan outputs/fennmoor/tight.");
        }
        Path folder = OutputPlace.ofRun(Optional.ofNullable(out), COMPARISONS, name);
        terminal.progress("Reading " + Figures.count(runs.size(), "run"));
        RunSet set = RunSet.read(runs);
        if (!mixed && !set.conflicts().isEmpty()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    String.join(System.lineSeparator(), set.conflicts()) + " Nothing was written.",
                    "Compare runs of one currency and horizon, or add --mixed to go on all the same.");
        }
        set.conflicts().forEach(conflict -> terminal.problem("Warning: " + conflict));
        set.remarks().forEach(remark -> terminal.problem("Warning: " + remark));
        set.write(folder);
        new ComparisonSummary(set.compare()).lines().forEach(terminal::result);
        terminal.result(
                PlanSummary.line("Report", folder.toAbsolutePath().normalize().toString()));
        return ExitStatus.PROVEN.code();
    }
}
