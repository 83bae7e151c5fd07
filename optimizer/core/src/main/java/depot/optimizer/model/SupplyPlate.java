package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import depot.optimizer.scenario.Depot;

/**
 * What is plugged in on plain circuits fits the supply beside the highest base load of any kind of day. Implied by {@link SupplyLimit} when every
 * kind of day is in the model; it keeps the days that are not.
 */
final class SupplyPlate implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        Depot depot = problem.depot();
        double base = problem.days().stream()
                .flatMap(day -> day.slices().stream())
                .mapToDouble(Slice::supplyBaseVa)
                .max()
                .orElse(0);
        Expr va = new Expr();
        for (int k = 0; k < problem.circuits().size(); k++) {
            SupplyLimit.addPlate(va, problem, capacity, k);
        }
        SupplyLimit.addGrowth(va, problem, capacity);
        model.atMost("supplyPlate", va, Math.max(0, SupplyLimit.usableVaPerAmp(depot) * depot.supplyAmps() - base));
    }
}
