package depot.optimizer.replay;

import depot.optimizer.replay.DayReplay.Outcome;
import java.util.List;
import java.util.stream.Stream;

/**
 * The proof of one depot's plan for a phase.
 *
 * @param phase id of the phase
 * @param days in the order of the plan; see {@link DayReplay#day()}
 * @param violations rules that the equipment itself, or the year as a whole, breaks
 * @param costs the plan's cost, worked out again
 */
public record DepotReplay(
        String depot, String phase, List<DayReplay> days, List<Violation> violations, CostCheck costs) {

    /** Whether no rule is broken on any day and the cost is right. Shortages that the plan declares do not count against it. */
    public boolean proven() {
        return violations.isEmpty()
                && costs.agrees()
                && days.stream().noneMatch(day -> day.outcome() == Outcome.FAILED);
    }

    /** Every violation, those of the equipment first. */
    public List<Violation> allViolations() {
        return Stream.concat(violations.stream(), days.stream().flatMap(day -> day.violations().stream()))
                .toList();
    }

    /** Days on which a rule is broken. */
    public List<DayReplay> failedDays() {
        return days.stream().filter(day -> day.outcome() == Outcome.FAILED).toList();
    }
}
