package depot.optimizer.sweep;

import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.change.Ownership;
import java.util.List;
import java.util.Optional;

/**
 * A loss at a depot whose days are its own.
 *
 * @param scenario in which nothing of the plan has been carried out
 * @param base of the depot
 */
record ApartLoss(Scenario scenario, DepotOutcome base, Loss loss) implements LossWork {

    @Override
    public LossResult result(Workshop workshop) {
        Scenario after = Ownership.after(Changes.apply(scenario, loss.changes()), base.plan(), loss.pieces());
        Optional<DepotOutcome> held = Optional.empty();
        String noPlan = "";
        try {
            held = Optional.of(workshop.outcome(DepotJob.keeping(after, Ownership.carriedOut(loss.left()))));
            if (held.get().bears(base)) {
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

    /** What the base plan costs from the day on which it has been carried out. */
    private double costWithNothingLost() {
        Scenario owning = Ownership.after(scenario, base.plan(), List.of());
        return LossWork.costCarriedOut(DepotJob.anew(owning, loss.depot()).problem(), base.plan());
    }
}
