package depot.optimizer.mip;

import java.util.List;

/**
 * What a solve came to. Why it stopped, how good the bound is and the point found are kept apart.
 *
 * @param stop why it stopped
 * @param objective value of the point, NaN without one
 * @param bound no point has a lower value; minus infinity when nothing is proven
 * @param point a value for each variable, empty when none was found
 * @param nodes branch-and-bound nodes
 * @param reducedCosts of each variable, for linear programs only, otherwise empty
 * @param duals of each row, for linear programs only, otherwise empty: what the optimum rises by when the row's bound does
 */
public record Outcome(
        Stop stop, double objective, double bound, double[] point, long nodes, double[] reducedCosts, double[] duals) {

    /** Why a solve stopped. */
    public enum Stop {
        /** The gap asked for was reached. */
        GAP_REACHED,
        /** A limit was reached; there may be a point. */
        LIMIT_REACHED,
        /** No point keeps all rows. */
        INFEASIBLE,
        /** The engine gave up. */
        FAILED
    }

    /** A point at which some variables have given values and all others are 0; nothing is proven of it. */
    public static Outcome at(List<Var> vars, double[] values) {
        int last = vars.stream().mapToInt(Var::index).max().orElse(-1);
        double[] point = new double[last + 1];
        for (int j = 0; j < values.length; j++) {
            point[vars.get(j).index()] = values[j];
        }
        return new Outcome(
                Stop.LIMIT_REACHED, Double.NaN, Double.NEGATIVE_INFINITY, point, 0, new double[0], new double[0]);
    }

    /** The same with a bound that may be better, and nodes looked at besides. */
    public Outcome after(double otherBound, long otherNodes) {
        return new Outcome(
                stop, objective, Math.max(bound, otherBound), point, nodes + otherNodes, reducedCosts, duals);
    }

    /** Whether a point was found. */
    public boolean hasPoint() {
        return point.length > 0;
    }

    /** Value of a variable. */
    public double value(Var var) {
        return point[var.index()];
    }

    /** Value of a whole-number variable, rounded. */
    public int count(Var var) {
        return (int) Math.rint(point[var.index()]);
    }

    /** Value of an expression. */
    public double value(Expr expr) {
        return expr.value(point);
    }
}
