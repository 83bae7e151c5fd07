package depot.optimizer.report.table;

import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;

/** What a depot's plan costs over the horizon. */
public final class DepotCost {

    private DepotCost() {}

    /** Present cost: the sum of its lines, not rounded. Whoever shows it rounds it once, so that it is one figure everywhere. */
    public static double present(DepotPlan plan) {
        return plan.costs().stream().mapToDouble(CostLine::presentCost).sum();
    }
}
