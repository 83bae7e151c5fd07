package depot.optimizer.sweep;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Owned;
import depot.optimizer.sweep.change.Change;
import java.util.List;

/**
 * Something that fails at a depot after the base plan has been carried out.
 *
 * @param phase id of the phase in which it fails, empty: there is only one
 * @param lost what, in plain words
 * @param left the depot's plan less what is lost
 * @param pieces that are lost
 * @param changes of the scenario
 */
public record Loss(
        String depot, String phase, Kind kind, String lost, DepotPlan left, List<Owned> pieces, List<Change> changes) {

    /** What is lost, and in which phase where there are several. */
    public String words() {
        return phase.isEmpty() ? lost : lost + " in " + phase;
    }

    /** What may fail. */
    public enum Kind {
        /** One charger is out of order. */
        CHARGER_OUT,
        /** Packs are lost. */
        PACKS_LOST,
        /** Crews are late. */
        LATE_RETURN
    }
}
