package depot.optimizer.cli;

import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.Violation;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** What a replay found, and the exit status that follows from it. */
final class ReplaySummary {

    /** Violations that are printed; a plan that fits another scenario can break a rule every day. */
    private static final int PRINTED = 20;

    private final ReplayReport report;

    ReplaySummary(ReplayReport report) {
        this.report = report;
    }

    /** Proven, short or failed. */
    ExitStatus status() {
        if (!report.proven()) {
            return ExitStatus.REPLAY_FAILED;
        }
        return days(Outcome.SHORT) > 0 ? ExitStatus.SHORTAGES : ExitStatus.PROVEN;
    }

    /** How many days are met, short or failed, and the first rules that are broken. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        double all = days(Outcome.MET) + days(Outcome.SHORT) + days(Outcome.FAILED);
        lines.add(PlanSummary.line(
                "Days met",
                "%s of %s a year%s, replayed minute by minute"
                        .formatted(whole(days(Outcome.MET)), Figures.count(whole(all), "depot day"), phases())));
        if (days(Outcome.SHORT) > 0) {
            lines.add(PlanSummary.line(
                    "Short",
                    "on %s a year work stays uncovered, as the plan says".formatted(depotDays(Outcome.SHORT))));
        }
        if (!report.proven()) {
            lines.addAll(failure());
        }
        return lines;
    }

    /** Each phase has a year of its own. */
    private String phases() {
        long phases =
                report.depots().stream().map(DepotReplay::phase).distinct().count();
        return phases > 1 ? ", over %d phases".formatted(phases) : "";
    }

    private List<String> failure() {
        List<String> lines = new ArrayList<>();
        lines.add(PlanSummary.line(
                "Failed", "on %s a year it does not go as the plan says".formatted(depotDays(Outcome.FAILED))));
        for (DepotReplay depot : report.depots()) {
            depot.costs().differences().forEach(difference -> lines.add("  " + depot.depot() + ": " + difference));
        }
        List<Violation> violations = report.violations();
        violations.stream()
                .limit(PRINTED)
                .forEach(violation -> lines.add("  %s: %s".formatted(violation.depot(), violation)));
        if (violations.size() > PRINTED) {
            lines.add("  and %d more".formatted(violations.size() - PRINTED));
        }
        return lines;
    }

    /** Days of a year that end so, summed over the depots. */
    private double days(Outcome outcome) {
        return report.depots().stream()
                .flatMap(depot -> depot.days().stream())
                .filter(day -> day.outcome() == outcome)
                .mapToDouble(DayReplay::daysPerYear)
                .sum();
    }

    private String depotDays(Outcome outcome) {
        return Figures.count(whole(days(outcome)), "depot day");
    }

    private static String whole(double days) {
        return Figures.read(days, 0);
    }
}
