package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;

/**
 * A circuit without a unit carries the plate current of everything plugged in, all at once.
 *
 * <p>For each circuit k: sum over c of I[c,k] plain[k,c] + sum over b of I[b,k] bankPlugs[k,b] &lt;= A[k] (built[k] - sum over u of unit[k,u]), in
 * amperes, with I = watts / (V pf), times sqrt(3) V on three phases, and A[k] = breaker rating times continuous factor less the highest base load of
 * any week.
 */
final class CircuitCurrent implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int k = 0; k < problem.circuits().size(); k++) {
            CircuitSite site = problem.circuits().get(k);
            Expr amps = new Expr();
            for (int c = 0; c < problem.chargers().size(); c++) {
                amps.add(problem.chargers().get(c).type().plateWatts() / site.wattsPerAmp(), capacity.plain[k][c]);
            }
            for (int b = 0; b < problem.bankTypes().size(); b++) {
                amps.add(problem.bankTypes().get(b).rechargeWatts() / site.wattsPerAmp(), capacity.bankPlugs[k][b]);
            }
            double usable = site.usableAmps(site.peakBaseAmps());
            amps.add(-usable, capacity.built[k]);
            for (Var unit : capacity.unit[k]) {
                amps.add(usable, unit);
            }
            amps.add(-site.circuit().continuousFactor(), capacity.relief.breakerAmps(k));
            model.atMost("circuitCurrent_" + site.circuit().id(), amps, 0);
        }
    }
}
