package depot.optimizer.sweep;

import depot.optimizer.plan.CostLine;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Sums over the depots of a case. */
public final class Fleet {
    private Fleet() {}

    /** Present cost. */
    public static double cost(List<DepotOutcome> depots) {
        return sum(depots, depot -> depot.certificate().cost());
    }

    /**
     * Present cost of what has a price: where shortage is forbidden, what counts for energy not covered is a penalty that nobody pays, and is left out.
     */
    public static double pricedCost(Scenario scenario, List<DepotOutcome> depots) {
        return cost(depots) - penalty(scenario, depots);
    }

    /** What counts for energy not covered where that is forbidden. */
    public static double penalty(Scenario scenario, List<DepotOutcome> depots) {
        return scenario.shortageCostPerKwh().isPresent()
                ? 0
                : sum(depots, depot -> depot.plan().costs().stream()
                        .filter(line -> line.category() == CostLine.Category.SHORTAGE)
                        .mapToDouble(CostLine::presentCost)
                        .sum());
    }

    /** No plan costs less. */
    public static double bound(List<DepotOutcome> depots) {
        return sum(depots, depot -> depot.certificate().bound());
    }

    /** Share of the cost that the bound leaves open. */
    public static double gap(List<DepotOutcome> depots) {
        double cost = cost(depots);
        return cost == 0 ? 0 : Math.max(0, (cost - bound(depots)) / Math.abs(cost));
    }

    /** Sum of a figure. */
    public static double sum(List<DepotOutcome> depots, ToDoubleFunction<DepotOutcome> figure) {
        return depots.stream().mapToDouble(figure).sum();
    }

    /** Whether every plan is proven. */
    public static boolean proven(List<DepotOutcome> depots) {
        return depots.stream().allMatch(DepotOutcome::proven);
    }
}
