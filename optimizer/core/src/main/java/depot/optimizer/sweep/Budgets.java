package depot.optimizer.sweep;

import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The budgets of a scenario.
 *
 * @param amounts by name of the limit; one that is not there is unlimited
 */
record Budgets(Map<String, Double> amounts) {

    static Budgets of(Scenario scenario) {
        Map<String, Double> amounts = new LinkedHashMap<>();
        for (SharedLimit limit : SharedLimits.of(scenario)) {
            if (limit.kind() == SharedLimit.Kind.BUDGET || limit.kind() == SharedLimit.Kind.REGION_BUDGET) {
                amounts.put(limit.name(), limit.most());
            }
        }
        return new Budgets(amounts);
    }

    /** Whether none of these is smaller than another scenario's. */
    boolean allowAll(Budgets other) {
        return amounts.entrySet().stream()
                .allMatch(budget -> other.amounts.containsKey(budget.getKey())
                        && budget.getValue() >= other.amounts.get(budget.getKey()));
    }
}
