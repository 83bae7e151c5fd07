package depot.optimizer.rerun;

import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;

/**
 * A fleet planned again.
 *
 * @param scenario the changed one
 * @param plan for the whole fleet. Pieces count as owned where {@code owned.csv} lists them, as in any plan; those that earlier runs bought count as
 *     bought, at today's prices. What is left to pay is in the changes
 * @param replay of that plan
 * @param changes one for each depot of the plan, in its order, then those that are gone
 * @param shared what changes beside single depots where they share limits or have several phases: the scenario then lists what is there as owned, and
 *     the plan pays only for the rest; empty: they do not
 */
public record RerunResult(
        EarlierRun earlier,
        Scenario scenario,
        Plan plan,
        ReplayReport replay,
        List<ExplainedShortage> shortages,
        List<DepotChange> changes,
        Optional<SharedChanges> shared) {

    /** Pieces that earlier runs bought and that no depot's plan uses. */
    public List<Owned> store() {
        return changes.stream().flatMap(change -> change.store().stream()).toList();
    }

    /** Present cost of the change, over all depots and what the fleet pays beside them. */
    public double costOfChange() {
        return changes.stream().mapToDouble(DepotChange::costOfChange).sum()
                + shared.map(fleet -> fleet.fleetCostAfter() - fleet.fleetCostBefore())
                        .orElse(0.0);
    }
}
