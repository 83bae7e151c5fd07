package depot.optimizer.report.table;

import depot.optimizer.advice.ReplayedPlan;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.replay.Violation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
        for (Violation violation : plan.replay().violations()) {
            first.putIfAbsent(violation.kind(), violation.message());
            days.put(violation.kind(), plan.days());
        }
        for (DayReplay day : plan.replay().days()) {
            List<Violation.Kind> kinds =
                    day.violations().stream().map(Violation::kind).distinct().toList();
            for (Violation.Kind kind : kinds) {
                boolean everyDay = plan.replay().violations().stream().anyMatch(any -> any.kind() == kind);
                if (!everyDay) {
                    days.merge(kind, day.daysPerYear(), Double::sum);
                }
            }
            day.violations().forEach(violation -> first.putIfAbsent(violation.kind(), violation.message()));
        }
        List<BrokenRules> rules = new ArrayList<>();
        days.forEach((kind, count) -> rules.add(new BrokenRules(kind, count, first.get(kind))));
        return List.copyOf(rules);
    }

    /** Days of a year on which a plan breaks no rule at all. */
    public static double daysKept(ReplayedPlan plan) {
        return plan.replay().violations().isEmpty() ? plan.days() - plan.days(Outcome.FAILED) : 0;
    }
}
