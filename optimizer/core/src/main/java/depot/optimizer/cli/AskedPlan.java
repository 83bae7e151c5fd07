package depot.optimizer.cli;

import depot.optimizer.advice.AdviceRun;
import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.spec.Sharing;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A plan that questions are asked about. It has to be one of these tables and to work, or every answer would be about the difference of two things at
 * once.
 *
 * @param named the plan as the user named it
 */
record AskedPlan(ScenarioInput input, Plan plan, Path named) {

    /**
     * Makes sure that the tables are those that the plan was made from.
     *
     * @throws UserError if a file differs, is new or is gone
     */
    void requireSameTables() {
        Map<String, String> now = input.inputHashes();
        Set<String> files = new TreeSet<>(now.keySet());
        files.addAll(plan.inputHashes().keySet());
        files.removeIf(
                file -> now.getOrDefault(file, "").equals(plan.inputHashes().get(file)));
        if (!files.isEmpty()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s is not the plan of these tables: %s in %s changed since; nothing was written"
                            .formatted(named, String.join(", ", files), input.folder()),
                    "Plan again with optimizer plan, then ask about the new plan.");
        }
    }

    /**
     * The depots asked about, all of the plan's where none is named.
     *
     * @throws UserError if one of those named is not in the plan
     */
    List<String> depots(List<String> asked) {
        List<String> planned =
                plan.depots().stream().map(DepotPlan::depot).distinct().toList();
        List<String> unknown =
                asked.stream().filter(depot -> !planned.contains(depot)).toList();
        if (!unknown.isEmpty()) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s has no depot %s; nothing was written".formatted(named, String.join(", ", unknown)),
                    "Its depots are " + String.join(", ", planned) + ".");
        }
        return asked.isEmpty() ? planned : asked;
    }

    /**
     * Makes sure that the plan works.
     *
     * @throws UserError if its replay finds a rule broken, or a depot falls short
     */
    void requireProven(Scenario scenario, List<String> depots) {
        boolean joined = Sharing.joined(scenario);
        ReplayReport report = joined ? FleetReplay.run(scenario, plan) : alone(scenario, depots);
        List<DepotReplay> replays = report.depots();
        ReplaySummary summary = new ReplaySummary(report);
        if (summary.status() == ExitStatus.REPLAY_FAILED) {
            throw new UserError(
                    ExitStatus.REPLAY_FAILED,
                    named + " does not pass its replay; nothing was written",
                    "optimizer replay says what is wrong with it.");
        }
        double shortDays = replays.stream()
                .flatMap(replay -> replay.days().stream())
                .filter(day -> day.outcome() == DayReplay.Outcome.SHORT)
                .mapToDouble(DayReplay::daysPerYear)
                .sum();
        if (shortDays > 0 && scenario.shortageCostPerKwh().isEmpty()) {
            throw new UserError(
                    ExitStatus.SHORTAGES,
                    "%s falls short on %s a year, and shortage has no price to reckon with; nothing was written"
                            .formatted(named, Figures.count(Figures.read(shortDays, 0), "depot day")),
                    "The run's shortages.csv says what would cure it.");
        }
    }

    private ReplayReport alone(Scenario scenario, List<String> depots) {
        return new ReplayReport(plan.depots().stream()
                .filter(depot -> depots.contains(depot.depot()))
                .map(depot -> FleetReplay.runDepot(scenario, depot))
                .toList());
    }

    /**
     * Makes sure that something can be said of what more room at one depot is worth to all.
     *
     * @throws UserError if that is asked and the plan has no prices that say it, nor can be planned anew as one model
     */
    void requirePrices(Scenario scenario, Set<Part> parts) {
        if (parts.contains(Part.WORTH) && !AdviceRun.tellsWorth(scenario, plan)) {
            throw new UserError(
                    ExitStatus.BAD_INPUT,
                    "%s has no prices of what the depots share and was not made as one model, so that nothing can be said of what more room is worth; nothing was written"
                            .formatted(named),
                    "Ask the other questions with --ask thumb --ask why --ask next, or plan again with optimizer plan.");
        }
    }
}
