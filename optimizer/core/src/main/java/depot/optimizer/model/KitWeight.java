package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;

/** A crew's portable chargers and power banks alone fit its payload, whatever the day: sum of weights &lt;= payload, in kg. */
final class KitWeight implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int w = 0; w < problem.crews().size(); w++) {
            Expr weight = weight(problem, capacity, w).add(-1, capacity.relief.payloadKg(w));
            model.atMost(
                    "kitWeight_" + problem.crews().get(w).id(),
                    weight,
                    problem.crews().get(w).payloadKg());
        }
    }

    /** Weight of a crew's portable chargers and power banks, in kg. */
    static Expr weight(DepotProblem problem, CapacityVars capacity, int crew) {
        Expr weight = new Expr();
        for (int t = 0; t < problem.portableChargers().size(); t++) {
            weight.add(problem.portableChargers().get(t).type().weightKg(), capacity.kit[crew][t]);
        }
        for (int b = 0; b < problem.bankTypes().size(); b++) {
            weight.add(problem.bankTypes().get(b).weightKg(), capacity.banks[crew][b]);
        }
        return weight;
    }
}
