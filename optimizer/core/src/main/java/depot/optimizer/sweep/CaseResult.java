package depot.optimizer.sweep;

import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.SortedMap;

/**
 * What came of a case.
 *
 * @param scenario after the case's changes
 * @param depots one for each depot, in the scenario's order; empty: there is no plan
 * @param touched depots that the changes touch
 * @param plansOf by depot: the case whose plan serves this one as well and costs less than the plan found for it
 * @param noPlan why there is no plan, empty: there is one
 */
public record CaseResult(
        SweepCase sweepCase,
        Scenario scenario,
        List<DepotOutcome> depots,
        List<String> touched,
        SortedMap<String, String> plansOf,
        String noPlan) {

    /** Whether there is a plan. */
    public boolean planned() {
        return noPlan.isEmpty();
    }

    /** Cost of all depots, as in {@link Fleet#pricedCost}. */
    public double cost() {
        return Fleet.pricedCost(scenario, depots);
    }
}
