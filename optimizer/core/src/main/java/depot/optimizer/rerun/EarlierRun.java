package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A run whose plan has been carried out, up to one of its phases.
 *
 * @param scenario that it was made for, as its tables say
 * @param store pieces that earlier runs bought and that this plan does not use, by depot, crew and item
 * @param carriedOut the last of its phases that has been carried out
 * @param standing what earlier runs left, where the run's tables list it as there already
 */
public record EarlierRun(Plan plan, Scenario scenario, List<Owned> store, String carriedOut, Standing standing) {

    /** Copies the list. */
    public EarlierRun {
        store = List.copyOf(store);
    }

    /** A run of which the first phase has been carried out. */
    public EarlierRun(Plan plan, Scenario scenario, List<Owned> store) {
        this(plan, scenario, store, plan.phases().get(0), Standing.NONE);
    }

    /** The plan of a depot for the phase that has been carried out last, empty: the run has no such depot. */
    public Optional<DepotPlan> depot(String id) {
        return depot(id, carriedOut);
    }

    /** The plan of a depot for a phase, empty: the run has none. */
    public Optional<DepotPlan> depot(String id, String phase) {
        return plan.depots().stream()
                .filter(depot -> depot.depot().equals(id) && depot.phase().equals(phase))
                .findFirst();
    }

    /** Phases that have been carried out, in order. */
    public List<String> phasesCarriedOut() {
        List<String> phases = plan.phases();
        return phases.subList(0, phases.indexOf(carriedOut) + 1);
    }

    /** Plans of depots for the phases that have been carried out. */
    List<DepotPlan> plansCarriedOut() {
        List<String> phases = phasesCarriedOut();
        return plan.depots().stream()
                .filter(depot -> phases.contains(depot.phase()))
                .toList();
    }

    /** Types of equipment in a plan that a scenario does not list; empty: they belong together. */
    public static List<String> unknownItems(DepotPlan plan, Scenario scenario) {
        Set<String> known = Items.of(scenario);
        return Pieces.used(plan).byItem().keySet().stream()
                .filter(item -> !known.contains(item))
                .toList();
    }
}
