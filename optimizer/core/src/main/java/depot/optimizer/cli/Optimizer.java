package depot.optimizer.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command line {@code optimizer}: what all commands share. */
@Command(
        name = "optimizer",
        header = "Plans battery packs and charging for outdoor crews over many depots.",
        description = "%nA scenario is a folder of tables: depots, crews, routes, packs, chargers, tariffs. "
                + "From it comes a plan: what to buy, where to plug it in, and what to charge when, with a proven "
                + "bound on how much cheaper any other plan could be.%n",
        synopsisSubcommandLabel = "COMMAND",
        versionProvider = Optimizer.Version.class,
        footer = {
            "%nExamples:",
            "  optimizer check inputs/fennmoor        are the tables right?",
            "  optimizer plan inputs/fennmoor         make a plan; it goes to outputs/fennmoor/plan",
            "  optimizer replay inputs/fennmoor outputs/fennmoor/plan --trials 1000",
            "                                         how often would the plan hold?",
            "  optimizer compare outputs/fennmoor/plan outputs/fennmoor/tight",
            "                                         what differs between two plans?",
            "  optimizer sweep inputs/starter inputs/starter/sweep.json",
            "                                         what if prices, demand or crews change?",
            "  optimizer explain inputs/starter outputs/starter/plan",
            "                                         why does the plan buy what it buys?",
            "  optimizer plan --help                  everything about one command"
        })
public final class Optimizer {

    private final Terminal terminal;
    private final Failures failures;

    private Optimizer(Terminal terminal, Failures failures) {
        this.terminal = terminal;
        this.failures = failures;
    }

    /** Runs one command and ends the process with its exit status. */
    public static void main(String[] arguments) {
        System.exit(run(Terminal.ofProcess(), Stages.standard(), arguments));
    }

    /** Runs one command and returns its exit status. */
    static int run(Terminal terminal, Stages stages, String... arguments) {
        Failures failures = new Failures(terminal);
        try {
            return commandLine(terminal, failures, stages).execute(arguments);
        } catch (Throwable failure) {
            // Errors such as a full memory pass picocli by.
            return failures.report(failure);
        }
    }

    private static CommandLine commandLine(Terminal terminal, Failures failures, Stages stages) {
        CommandLine root = new CommandLine(new Optimizer(terminal, failures));
        List.of(
                        new CheckCommand(terminal),
                        new PlanCommand(terminal, stages),
                        new ReplayCommand(terminal),
                        new VerifyCommand(terminal),
                        new CompareCommand(terminal),
                        new SweepCommand(terminal),
                        new ExplainCommand(terminal),
                        new ExportCommand(terminal, stages),
                        new GenerateCommand(terminal),
                        new ImportTariffCommand(terminal),
                        new CompletionCommand(terminal))
                .forEach(root::addSubcommand);
        root.setOut(terminal.out())
                .setErr(terminal.err())
                .setExecutionExceptionHandler(failures)
                .setParameterExceptionHandler(failures)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpWidth(100);
        explainExitStatus(root);
        root.getSubcommands().values().forEach(Optimizer::explainExitStatus);
        return root;
    }

    private static void explainExitStatus(CommandLine command) {
        UsageMessageSpec help = command.getCommandSpec().usageMessage();
        help.exitCodeListHeading("%nExit status:%n");
        help.exitCodeList(ExitStatus.list());
        help.abbreviateSynopsis(true);
        help.sortOptions(false);
    }

    @Option(
            names = {"-q", "--quiet"},
            scope = ScopeType.INHERIT,
            order = 100,
            description = "Print results and errors only: no progress, no notices.")
    void quiet(boolean asked) {
        if (asked) {
            terminal.beQuiet();
        }
    }

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            order = 101,
            description = "When the program fails, print where.")
    void trace(boolean asked) {
        if (asked) {
            failures.trace();
        }
    }

    @Option(
            names = {"-h", "--help"},
            scope = ScopeType.INHERIT,
            order = 102,
            usageHelp = true,
            description = "Print this help.")
    @SuppressWarnings("UnusedVariable") // picocli looks at it
    private boolean help;

    @Option(names = "--version", versionHelp = true, order = 103, description = "Print the version.")
    @SuppressWarnings("UnusedVariable") // picocli looks at it
    private boolean version;

    /** The version that the build wrote into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Optimizer.class.getPackage().getImplementationVersion();
            return new String[] {"optimizer " + (version == null ? "(not packaged)" : version)};
        }
    }
}
