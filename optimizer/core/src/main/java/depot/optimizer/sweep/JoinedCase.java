package depot.optimizer.sweep;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.dictionary.SweepFields.Purchases;
import depot.optimizer.fleet.NothingFitsException;
import depot.optimizer.fleet.NothingFitsException.TooSmall;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.FleetJob.Beginning;
import depot.optimizer.sweep.change.Change;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** A case whose depots are planned together, over all phases. */
final class JoinedCase implements CaseWork {

    private final SweepCase sweepCase;
    private final FleetJob job;
    private final Scenario changed;
    private final FleetOutcome base;
    private final Workshop workshop;
    private final Consumer<String> progress;
    private final List<String> touched;
    private Future<FleetOutcome> future;

    /**
     * @param before the scenario as it is
     * @param beginning what the search for it has left behind
     * @param changed the scenario after the case's changes
     * @param base of the scenario as it is
     */
    JoinedCase(
            SweepCase sweepCase,
            FleetJob before,
            Optional<Beginning> beginning,
            Scenario changed,
            FleetOutcome base,
            Workshop workshop,
            Consumer<String> progress) {
        this.sweepCase = sweepCase;
        this.changed = changed;
        this.base = base;
        this.workshop = workshop;
        this.progress = progress;
        job = FleetJob.of(changed).from(beginning);
        touched = job.touchedSince(before);
    }

    @Override
    public int steps() {
        return touched.isEmpty() ? 0 : 1;
    }

    @Override
    public void begin() {
        if (!touched.isEmpty()) {
            future = workshop.submit(this::outcome);
        }
    }

    private FleetOutcome outcome() {
        try {
            return sweepCase.purchases() == Purchases.ANEW
                    ? workshop.outcome(job, 1)
                    : HeldFleet.of(job, base, touched);
        } finally {
            progress.accept(sweepCase.name());
        }
    }

    @Override
    public CaseResult result() {
        try {
            FleetOutcome fleet = touched.isEmpty() ? base : Workshop.await(future);
            return CaseResult.planned(sweepCase, changed, fleet, touched);
        } catch (NothingFitsException e) {
            return CaseResult.unplanned(sweepCase, changed, touched, e.getMessage(), least(e.tooSmall()));
        } catch (NoPlanException e) {
            return CaseResult.unplanned(sweepCase, changed, touched, e.getMessage(), OptionalDouble.empty());
        }
    }

    /** Where a single budget, or all of them by one factor, are changed: the value of the change with which each budget by itself would do. */
    private OptionalDouble least(List<TooSmall> tooSmall) {
        if (sweepCase.changes().size() != 1) {
            return OptionalDouble.empty();
        }
        Change change = sweepCase.changes().get(0);
        return tooSmall.stream()
                .filter(each -> concerns(change, each.budget()))
                .mapToDouble(each -> change.kind() == ChangeKind.BUDGET
                        ? each.least()
                        : change.value().doubleValue()
                                * each.least()
                                / each.budget().most())
                .filter(Double::isFinite)
                .max();
    }

    private static boolean concerns(Change change, SharedLimit budget) {
        return change.kind() == ChangeKind.ALL_BUDGETS
                || (change.kind() == ChangeKind.BUDGET
                        && budget.kind() == SharedLimit.Kind.BUDGET
                        && (change.of().isEmpty() || change.of().equals(budget.phase())));
    }
}
