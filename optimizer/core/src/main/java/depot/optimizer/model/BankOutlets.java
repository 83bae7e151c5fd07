package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;

/** Every power bank has an outlet of a plain circuit for the night: sum over k of bankPlugs[k,b] &gt;= sum over w of banks[w,b]. */
final class BankOutlets implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int b = 0; b < problem.bankTypes().size(); b++) {
            Expr plugs = new Expr();
            for (int k = 0; k < problem.circuits().size(); k++) {
                plugs.add(1, capacity.bankPlugs[k][b]);
            }
            for (int w = 0; w < problem.crews().size(); w++) {
                plugs.add(-1, capacity.banks[w][b]);
            }
            model.atLeast("bankOutlets_" + problem.bankTypes().get(b).id(), plugs, 0);
        }
    }
}
