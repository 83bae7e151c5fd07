package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A run whose plan has been carried out.
 *
 * @param scenario that it was made for, as its tables say
 * @param store pieces that earlier runs bought and that this plan does not use, by depot, crew and item
 */
public record EarlierRun(Plan plan, Scenario scenario, List<Owned> store) {

    /** Copies the list. */
    public EarlierRun {
        store = List.copyOf(store);
    }

    /** The plan of a depot, empty: the run has no such depot. */
    public Optional<DepotPlan> depot(String id) {
        return plan.depots().stream().filter(depot -> depot.depot().equals(id)).findFirst();
    }

    /** Types of equipment in a plan that a scenario does not list; empty: they belong together. */
    public static List<String> unknownItems(DepotPlan plan, Scenario scenario) {
        Set<String> known = Items.of(scenario);
        return Pieces.used(plan).byItem().keySet().stream()
                .filter(item -> !known.contains(item))
                .toList();
    }
}
