package depot.optimizer.cli;

import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code optimizer check}: reads a scenario and prints every finding. */
@Command(
        name = "check",
        header = "Reads the tables of a scenario and prints everything that is wrong with them, all at once.",
        description =
                "%nEach finding says where it is (file, line, column), what the table says there, and what to do. "
                        + "Errors must be put right before a plan can be made; notices may be meant. Nothing is written.%n",
        footer = {"%nExample:", "  optimizer check inputs/fennmoor", "  inputs/fennmoor/stops.csv:12:arrive: error: ..."
        })
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(paramLabel = "SCENARIO", description = "Folder with the scenario's tables.")
    private Path folder;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        Scenario scenario = input.scenario();
        terminal.result("%s is ready to be planned: %s, %s, %s, %s in %s; %s."
                .formatted(
                        scenario.name(),
                        Figures.count(scenario.depots().size(), "depot"),
                        Figures.count(scenario.crews().size(), "crew"),
                        Figures.count(scenario.circuits().size(), "circuit"),
                        Figures.count(scenario.stops().size(), "stop"),
                        Figures.count(scenario.seasons().size(), "season"),
                        Figures.count(input.notices(), "notice")));
        return ExitStatus.PROVEN.code();
    }
}
