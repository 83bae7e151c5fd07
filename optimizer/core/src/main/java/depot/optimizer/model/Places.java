package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;

/** Mounted chargers take wall or bench places: sum over k, c of places[c] (plain[k,c] + shared[k,c]) &lt;= places of the depot. */
final class Places implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        Expr taken = new Expr();
        for (int k = 0; k < problem.circuits().size(); k++) {
            for (int c = 0; c < problem.chargers().size(); c++) {
                int places = problem.chargers().get(c).type().places();
                taken.add(places, capacity.plain[k][c]).add(places, capacity.shared[k][c]);
            }
        }
        taken.add(-1, capacity.relief.places());
        model.atMost("places", taken, problem.depot().places());
    }
}
