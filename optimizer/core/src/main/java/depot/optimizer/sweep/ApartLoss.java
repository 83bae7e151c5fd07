package depot.optimizer.sweep;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.MeasuredPlan;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.change.Ownership;
import depot.optimizer.sweep.change.StandingPhase;
import depot.optimizer.sweep.spec.Sweep.Losses;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds out whether a depot's base plan holds with a loss, and where not, what has to be bought on top. */
final class LossWork {

    /** Energy below this is rounding, in kWh a year. */
    private static final double ROUNDING_KWH = 0.01;

    private final Scenario scenario;
    private final DepotOutcome base;
    private final Loss loss;

    LossWork(Scenario scenario, DepotOutcome base, Loss loss) {
        this.scenario = scenario;
        this.base = base;
        this.loss = loss;
    }

    /**
     * Everything that is asked of a depot of a fleet that shares limits or has several phases, phase by phase: each phase stands by itself, with the
     * crews that work from the depot in it. A phase that has what the one before it has is not asked again.
     */
    static List<LossWork> inPhases(Losses asked, Scenario scenario, List<DepotPlan> phases) {
        List<LossWork> works = new ArrayList<>();
        DepotPlan last = null;
        for (DepotPlan phase : phases) {
            DepotPlan plan = StandingPhase.plan(phase);
            DepotPlan stands = Ownership.carriedOut(plan).with(plan.days(), List.of());
            boolean again = last != null && last.withStop(stands.stop()).equals(stands);
            last = stands;
            Scenario alone = StandingPhase.of(scenario, phase, phases.get(0));
            if (!again && !alone.crews().isEmpty()) {
                Scenario there = Ownership.after(alone, plan, List.of());
                DepotOutcome base = DepotOutcome.of(plan, FleetReplay.runDepot(there, Ownership.carriedOut(plan)));
                String name = phases.size() == 1 ? "" : phase.phase();
                LossList.of(asked, plan, name).forEach(loss -> works.add(new LossWork(alone, base, loss)));
            }
        }
        return works;
    }

    String words() {
        return loss.depot() + ", " + loss.words();
    }

    LossResult result(Workshop workshop) {
        Scenario after = Ownership.after(Changes.apply(scenario, loss.changes()), base.plan(), loss.pieces());
        Optional<DepotOutcome> held = Optional.empty();
        String noPlan = "";
        try {
            held = Optional.of(workshop.outcome(DepotJob.keeping(after, Ownership.carriedOut(loss.left()))));
            if (holds(held.get())) {
                return new LossResult(loss, after, held, true, Optional.empty(), 0, "");
            }
        } catch (NoPlanException e) {
            noPlan = e.getMessage();
        }
        try {
            DepotOutcome cured = workshop.outcome(DepotJob.anew(after, loss.depot()));
            double more = cured.certificate().cost() - costWithNothingLost();
            return new LossResult(loss, after, held, false, Optional.of(cured), more, "");
        } catch (NoPlanException e) {
            return new LossResult(
                    loss, after, held, false, Optional.empty(), 0, noPlan.isEmpty() ? e.getMessage() : noPlan);
        }
    }

    private boolean holds(DepotOutcome held) {
        return held.proven() && held.shortKwh() <= base.shortKwh() + ROUNDING_KWH;
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
