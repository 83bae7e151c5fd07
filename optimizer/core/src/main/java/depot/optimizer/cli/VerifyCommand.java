package depot.optimizer.cli;

import depot.optimizer.plan.Plan;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.report.PlanJson;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code optimizer verify}: adds a plan's certificate up again, from its file and the tables. */
@Command(
        name = "verify",
        header = "Adds up a plan's cost and bound again, in decimals and without the solver.",
        description =
                "%nThe cost is worked out from the tables, every rule and every day is replayed, and the bound is added up from the "
                        + "prices of what the depots share and from each depot's own bound. These own bounds are taken as they are: "
                        + "only a new plan proves them again. Nothing is written.%n",
        footer = {"%nExample:", "  optimizer verify inputs/fennmoor outputs/fennmoor/plan"})
final class VerifyCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "SCENARIO", description = "Folder with the scenario's tables.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "PLAN", description = "A run's folder, or its plan.json.")
    private Path plan;

    VerifyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Path file = Files.isDirectory(plan) ? plan.resolve(PlanJson.FILE_NAME) : plan;
        Plan written = PlanJson.read(file);
        ScenarioInput input = ScenarioInput.load(folder, terminal);
        Scenario scenario = input.scenario();
        terminal.progress("Replaying " + file);
        ReplayReport replay = FleetReplay.run(scenario, written);
        BoundCheck check = BoundCheck.of(scenario, written);
        String cost = money(BigDecimal.valueOf(written.certificate().cost()), written);
        terminal.result(PlanSummary.line(
                "Cost", cost + (replay.proven() ? ", as the tables have it" : ", which does not hold")));
        check.lines()
                .forEach(line -> terminal.result("    %-48s %s".formatted(line.what(), money(line.amount(), written))));
        terminal.result(PlanSummary.line("Bound", money(check.bound(), written) + ", added up again"));
        terminal.result(PlanSummary.line("Gap", PlanSummary.percent(check.gap().doubleValue())));
        check.faults().forEach(fault -> terminal.problem("  " + fault));
        ReplaySummary summary = new ReplaySummary(replay);
        summary.lines().forEach(terminal::result);
        return check.faults().isEmpty() ? summary.status().code() : ExitStatus.REPLAY_FAILED.code();
    }

    private static String money(BigDecimal amount, Plan plan) {
        return Figures.read(amount.doubleValue(), 2) + " " + plan.currency();
    }
}
