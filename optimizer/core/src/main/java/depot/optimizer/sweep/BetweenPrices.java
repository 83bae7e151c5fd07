package depot.optimizer.sweep;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.solve.RepricedPlan;

/**
 * What the plans of two cases that differ in one price tell about a case in between. Either plan can be carried out there as well. No plan costs less
 * there than the straight line between the two bounds: each plan's cost is linear in the price, so that it is at least the mean, weighted by the
 * distances, of what it costs at the two ends.
 *
 * @param share how far it is from the lower to the higher price, more than 0 and less than 1
 */
record BetweenPrices(CaseResult low, CaseResult high, double share) {

    /**
     * A depot's plan that is known before a search.
     *
     * @param from name of the case whose plan it is
     * @param plan at the prices in between
     * @param bound no plan costs less there
     */
    record Known(String from, DepotPlan plan, double bound) {}

    /** The cheaper of the two plans of a depot. */
    Known known(DepotJob job) {
        String depot = job.problem().depot().id();
        DepotPlan lower = at(low, depot);
        DepotPlan higher = at(high, depot);
        double bound = (1 - share) * bound(lower) + share * bound(higher);
        DepotPlan one = RepricedPlan.of(job.problem(), lower);
        DepotPlan other = RepricedPlan.of(job.problem(), higher);
        return cost(other) < cost(one)
                ? new Known(high.sweepCase().name(), other, bound)
                : new Known(low.sweepCase().name(), one, bound);
    }

    private static DepotPlan at(CaseResult result, String depot) {
        return result.depots().stream()
                .map(DepotOutcome::plan)
                .filter(plan -> plan.depot().equals(depot))
                .findFirst()
                .orElseThrow();
    }

    private static double bound(DepotPlan plan) {
        return plan.stop().certificate().bound();
    }

    private static double cost(DepotPlan plan) {
        return plan.stop().certificate().cost();
    }
}
