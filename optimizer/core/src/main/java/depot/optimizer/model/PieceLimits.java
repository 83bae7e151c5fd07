package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Var;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.PieceLimit;
import depot.optimizer.problem.PieceLimit.Kind;
import depot.optimizer.scenario.Circuit;

/**
 * Some pieces may not be had, or not so many of them: sum of the pieces that a limit l is about &lt;= most[l]. A plan has no such limits; questions
 * about a plan set them.
 */
final class PieceLimits implements CapacityRule {

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity) {
        for (int l = 0; l < problem.pieceLimits().size(); l++) {
            PieceLimit limit = problem.pieceLimits().get(l);
            model.atMost("pieceLimit_" + l, pieces(problem, capacity, limit), limit.most());
        }
    }

    private static Expr pieces(DepotProblem problem, CapacityVars capacity, PieceLimit limit) {
        Expr pieces = new Expr();
        addCircuits(pieces, problem, capacity, limit);
        if (limit.kind() == Kind.SUPPLY) {
            pieces.add(1, capacity.upgrade);
        }
        for (int q = 0; q < capacity.packs.length; q++) {
            for (int p = 0; p < capacity.packs[q].length; p++) {
                String type = problem.packTypes().get(p).id();
                addIf(limit.covers(Kind.PACK, type, problem.pools().get(q)), pieces, capacity.packs[q][p]);
            }
        }
        for (int w = 0; w < problem.crews().size(); w++) {
            String crew = problem.crews().get(w).id();
            for (int t = 0; t < capacity.kit[w].length; t++) {
                String type = problem.portableChargers().get(t).type().id();
                addIf(limit.covers(Kind.PORTABLE, type, crew), pieces, capacity.kit[w][t]);
            }
            for (int b = 0; b < capacity.banks[w].length; b++) {
                String type = problem.bankTypes().get(b).id();
                addIf(limit.covers(Kind.BANK, type, crew), pieces, capacity.banks[w][b]);
            }
        }
        return pieces;
    }

    private static void addCircuits(Expr pieces, DepotProblem problem, CapacityVars capacity, PieceLimit limit) {
        for (int k = 0; k < problem.circuits().size(); k++) {
            Circuit circuit = problem.circuits().get(k).circuit();
            boolean here = limit.covers(Kind.CIRCUIT, circuit.id(), PieceLimit.ANY);
            addIf(here && circuit.candidate(), pieces, capacity.built[k]);
            for (int c = 0; c < problem.chargers().size(); c++) {
                ChargerOption option = problem.chargers().get(c);
                boolean covered = limit.covers(Kind.CHARGER, option.type().id(), circuit.id());
                addIf(covered, pieces, capacity.plain[k][c]);
                addIf(covered, pieces, capacity.shared[k][c]);
            }
            for (int u = 0; u < problem.unitTypes().size(); u++) {
                String type = problem.unitTypes().get(u).id();
                addIf(limit.covers(Kind.UNIT, type, circuit.id()), pieces, capacity.unit[k][u]);
            }
        }
    }

    private static void addIf(boolean covered, Expr pieces, Var var) {
        if (covered) {
            pieces.add(1, var);
        }
    }
}
