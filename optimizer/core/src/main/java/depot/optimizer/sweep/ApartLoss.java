package depot.optimizer.sweep;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.MeasuredPlan;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.change.Ownership;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A loss at a depot whose days are its own. */
final class ApartLoss implements LossWork {

    private final Scenario scenario;
    private final DepotOutcome base;
    private final Loss loss;

    /**
     * @param scenario in which nothing of the plan has been carried out
     * @param base of the depot
     */
    ApartLoss(Scenario scenario, DepotOutcome base, Loss loss) {
        this.scenario = scenario;
        this.base = base;
        this.loss = loss;
    }

    @Override
    public String words() {
        return loss.depot() + ", " + loss.words();
    }

    @Override
    public LossResult result(Workshop workshop) {
        Scenario after = Ownership.after(Changes.apply(scenario, loss.changes()), base.plan(), loss.pieces());
        Optional<DepotOutcome> held = Optional.empty();
        String noPlan = "";
        try {
            held = Optional.of(workshop.outcome(DepotJob.keeping(after, Ownership.carriedOut(loss.left()))));
            if (holds(held.get())) {
                return LossResult.holding(loss, after, held.get(), List.of());
            }
        } catch (NoPlanException e) {
            noPlan = e.getMessage();
        }
        try {
            DepotOutcome cured = workshop.outcome(DepotJob.anew(after, loss.depot()));
            double more = cured.certificate().cost() - costWithNothingLost();
            return new LossResult(loss, after, held, List.of(), false, Optional.of(cured), more, "");
        } catch (NoPlanException e) {
            String why = noPlan.isEmpty() ? e.getMessage() : noPlan;
            return new LossResult(loss, after, held, List.of(), false, Optional.empty(), 0, why);
        }
    }

    private boolean holds(DepotOutcome held) {
        return held.bears(base);
    }

    /** What the base plan costs from the day on which it has been carried out. */
    private double costWithNothingLost() {
        Scenario owning = Ownership.after(scenario, base.plan(), List.of());
        DepotPlan plan = Ownership.carriedOut(base.plan());
        return MeasuredPlan.of(DepotJob.anew(owning, loss.depot()).problem(), plan, Map.of())
                .stop()
                .certificate()
                .cost();
    }
}
