package depot.optimizer.report.table;

import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.Violation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * A rule that a plan breaks.
 *
 * @param daysPerYear on which it is broken; a rule about the equipment itself is broken every day
 * @param first what is wrong, the first time
 */
public record BrokenRules(Violation.Kind kind, double daysPerYear, String first) {

    /** The rules that a plan breaks, in the order in which they are checked. */
    public static List<BrokenRules> of(ReplayedPlan plan) {
        Map<Violation.Kind, String> first = new TreeMap<>();
        Map<Violation.Kind, Double> days = new TreeMap<>();
        for (DepotReplay replay : plan.replays()) {
            double all =
                    replay.days().stream().mapToDouble(DayReplay::daysPerYear).sum();
            Set<Violation.Kind> everyDay = new HashSet<>();
            for (Violation violation : replay.violations()) {
                first.putIfAbsent(violation.kind(), violation.message());
                if (everyDay.add(violation.kind())) {
                    days.merge(violation.kind(), all, Double::sum);
                }
            }
            for (DayReplay day : replay.days()) {
                day.violations().stream()
                        .map(Violation::kind)
                        .distinct()
                        .filter(kind -> !everyDay.contains(kind))
                        .forEach(kind -> days.merge(kind, day.daysPerYear(), Double::sum));
                day.violations().forEach(violation -> first.putIfAbsent(violation.kind(), violation.message()));
            }
        }
        List<BrokenRules> rules = new ArrayList<>();
        days.forEach((kind, count) -> rules.add(new BrokenRules(kind, count, first.get(kind))));
        return List.copyOf(rules);
    }

    /** Days of a year on which a plan breaks no rule at all, of each phase. */
    public static double daysKept(ReplayedPlan plan) {
        double kept = 0;
        for (DepotReplay replay : plan.replays()) {
            for (DayReplay day : replay.days()) {
                boolean keeps = replay.violations().isEmpty() && day.outcome() != Outcome.FAILED;
                kept += keeps ? day.daysPerYear() : 0;
            }
        }
        return kept;
    }
}
