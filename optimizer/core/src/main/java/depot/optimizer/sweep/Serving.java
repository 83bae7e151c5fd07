package depot.optimizer.sweep;

import depot.optimizer.dictionary.SweepFields;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Change.Subject;
import depot.optimizer.sweep.change.Changes;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Says whether plans for one case ought to serve another, going by the direction of each change. */
final class Serving {

    private final Scenario scenario;

    Serving(Scenario scenario) {
        this.scenario = scenario;
    }

    /** Whether no change makes {@code wanted} harder than {@code planned}. */
    boolean serves(List<Change> planned, List<Change> wanted) {
        Set<Subject> subjects = new LinkedHashSet<>();
        planned.forEach(change -> subjects.add(change.subject()));
        wanted.forEach(change -> subjects.add(change.subject()));
        return subjects.stream().allMatch(subject -> easier(subject, value(planned, subject), value(wanted, subject)));
    }

    /** The same, budgets aside: whether a plan keeps them is seen from what it spends. */
    boolean servesBudgetsAside(List<Change> planned, List<Change> wanted) {
        return serves(withoutBudgets(planned), withoutBudgets(wanted));
    }

    /** Whether the two differ in nothing but budgets. */
    static boolean alikeButForBudgets(List<Change> one, List<Change> other) {
        return keys(one).equals(keys(other));
    }

    private static Set<String> keys(List<Change> changes) {
        return withoutBudgets(changes).stream().map(Change::key).collect(Collectors.toSet());
    }

    private static List<Change> withoutBudgets(List<Change> changes) {
        return changes.stream()
                .filter(change -> !SweepFields.FRONTIER_KINDS.contains(change.kind()))
                .toList();
    }

    private OptionalDouble value(List<Change> changes, Subject subject) {
        return changes.stream()
                .filter(change -> change.subject().equals(subject))
                .map(change -> OptionalDouble.of(change.value().doubleValue()))
                .findFirst()
                .orElseGet(() -> Changes.neutral(scenario, subject.kind(), subject.of()));
    }

    private static boolean easier(Subject subject, OptionalDouble planned, OptionalDouble wanted) {
        return switch (subject.kind().easier()) {
            case SAME -> true;
            case LOWER -> known(planned, wanted) && wanted.getAsDouble() <= planned.getAsDouble();
            case HIGHER -> known(planned, wanted) && wanted.getAsDouble() >= planned.getAsDouble();
            case NEITHER -> known(planned, wanted) && wanted.getAsDouble() == planned.getAsDouble();
        };
    }

    private static boolean known(OptionalDouble planned, OptionalDouble wanted) {
        return planned.isPresent() && wanted.isPresent();
    }
}
