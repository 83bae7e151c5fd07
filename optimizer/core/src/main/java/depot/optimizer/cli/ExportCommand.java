package depot.optimizer.cli;

import depot.optimizer.mip.ModelFormat;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code optimizer export}: the model as a file for any solver. */
@Command(
        name = "export",
        header = "Writes the mathematical model as a file that any solver can read.",
        description =
                "%nFor checking this program's answers with another one. Costs that nothing changes are the price of "
                        + "a variable named Constant, which is 1. Letters that a format forbids in names become underscores.%n",
        footer = {
            "%nExamples:",
            "  optimizer export inputs/fennmoor --out fennmoor.mps",
            "  optimizer export inputs/fennmoor --depot D1 --format lp --out d1.lp"
        })
final class ExportCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Stages stages;

    @Parameters(paramLabel = "SCENARIO", description = "Folder with the scenario's tables.")
    private Path folder;

    @Option(names = "--format", paramLabel = "FORMAT", description = "mps, or lp, which people can read. Usually mps.")
    private ModelFormat format = ModelFormat.MPS;

    @Option(names = "--depot", paramLabel = "ID", description = "Only this depot. Usually all of them, in one model.")
    private String depot;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description =
                    "File to write. Usually outputs/<scenario>/<depot or model>.<format> in the program's folder.")
    private Path out;

    ExportCommand(Terminal terminal, Stages stages) {
        this.terminal = terminal;
        this.stages = stages;
    }

    @Override
    public Integer call() throws IOException {
        Path file = out == null ? OutputPlace.ofScenario(folder).resolve(fileName()) : out;
        OutputPlace.requireWritableFile(file);
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        Scenario scenario = chosen(input.scenario());
        terminal.progress("Writing " + file);
        Unfinished.writeFile(file, draft -> stages.exporter().write(scenario, draft, format));
        terminal.result("Wrote " + file);
        return ExitStatus.PROVEN.code();
    }

    private String fileName() {
        return (depot == null ? "model" : depot) + "." + format.name().toLowerCase(Locale.ROOT);
    }

    private Scenario chosen(Scenario scenario) {
        if (depot == null) {
            return scenario;
        }
        if (scenario.depots().stream().noneMatch(any -> any.id().equals(depot))) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s has no depot \"%s\"".formatted(scenario.name(), depot),
                    "It has " + scenario.depots().stream().map(Depot::id).collect(Collectors.joining(", ")) + ".");
        }
        return OneDepot.of(scenario, depot);
    }
}
