package depot.optimizer.cli;

import depot.optimizer.generate.FleetGenerator;
import depot.optimizer.generate.GeneratorSettings;
import depot.optimizer.generate.ScenarioWriter;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code optimizer generate}: a synthetic fleet of any size. */
@Command(
        name = "generate",
        header = "Makes up a fleet of any size and writes its tables.",
        description = "%nGood for trying the program out, and for seeing how long a fleet of that size takes. "
                + "The same numbers and the same seed give the same tables, byte by byte.%n",
        footer = {
            "%nExamples:",
            "  optimizer generate --depots 20 --crews 6 --out inputs/twenty",
            "  optimizer plan inputs/twenty",
            "  optimizer generate --phases 3 --conversions --budget-share 30%% --tiers --out inputs/rollout"
        })
final class GenerateCommand implements Callable<Integer> {

    private static final GeneratorSettings USUAL = GeneratorSettings.DEFAULT;

    private final Terminal terminal;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "New folder for the tables.")
    private Path out;

    @Option(names = "--depots", paramLabel = "N", converter = Converters.Count.class, description = "Depots.")
    private int depots = USUAL.depots();

    @Option(
            names = "--crews",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Crews of each depot.")
    private int crews = USUAL.crewsPerDepot();

    @Option(
            names = "--circuits",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Circuits of each depot, from 2.")
    private int circuits = USUAL.circuitsPerDepot();

    @Option(
            names = "--charger-types",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Types of chargers to choose from.")
    private int chargerTypes = USUAL.chargerTypes();

    @Option(
            names = "--pack-types",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Types of packs to choose from.")
    private int packTypes = USUAL.packTypes();

    @Option(
            names = "--seasons",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Seasons of the year.")
    private int seasons = USUAL.seasons();

    @Option(
            names = "--days",
            paramLabel = "N",
            converter = Converters.Count.class,
            description = "Kinds of working days in a week, 1 to 7.")
    private int days = USUAL.days();

    @Mixin
    private CouplingOptions coupling = new CouplingOptions();

    @Option(names = "--seed", paramLabel = "N", description = "Seed of everything that is drawn.")
    private int seed = 1;

    GenerateCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Scenario scenario = scenario();
        OutputPlace.requireNewFolder(out);
        Unfinished.writeFolder(out, folder -> ScenarioWriter.write(scenario, folder));
        terminal.result("%s: %s, %s, in %s"
                .formatted(
                        scenario.name(),
                        Figures.count(scenario.depots().size(), "depot"),
                        Figures.count(scenario.crews().size(), "crew"),
                        out));
        return ExitStatus.PROVEN.code();
    }

    private Scenario scenario() {
        try {
            return FleetGenerator.generate(
                    new GeneratorSettings(depots, crews, circuits, chargerTypes, packTypes, seasons, days),
                    coupling.settings(),
                    seed);
        } catch (IllegalArgumentException e) {
            throw new UserError(
                    ExitStatus.BAD_INPUT, e.getMessage(), "optimizer generate --help lists the options.", e);
        }
    }
}
