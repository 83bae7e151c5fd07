package depot.optimizer.advice;

import depot.optimizer.plan.Certificate;

/**
 * What the best plan of a changed depot costs more than the best plan of the depot as it is. Both are known to lie between a bound and a cost, so that
 * the difference lies in a span.
 *
 * @param found between the plans found
 * @param least the difference of the best plans is at least this
 * @param most it is at most this
 */
public record Difference(double found, double least, double most) {

    /** Less than this is rounding, in the currency. */
    private static final double ROUNDING = 0.005;

    /** For a depot that may do less than before: no plan of it can cost less than the best plan of the depot as it is. */
    public static Difference harder(Certificate base, Certificate changed) {
        double bound = Math.max(base.bound(), changed.bound());
        return new Difference(
                changed.cost() - base.cost(),
                Math.max(0, bound - base.cost()),
                Math.max(0, changed.cost() - base.bound()));
    }

    /** For a depot that may do more than before: its best plan cannot cost more. */
    public static Difference easier(Certificate base, Certificate changed) {
        double cost = Math.min(base.cost(), changed.cost());
        double bound = Math.min(base.bound(), changed.bound());
        return new Difference(cost - base.cost(), bound - base.cost(), Math.min(0, cost - base.bound()));
    }

    /** No difference at all. */
    public static Difference none() {
        return new Difference(0, 0, 0);
    }

    /** Whether there is a difference for sure; if not, what was found may be the gap's. */
    public boolean told() {
        return least > ROUNDING || most < -ROUNDING;
    }

    /** Whether it is sure that there is no difference worth a coin. */
    public boolean surelyNone() {
        return least >= -ROUNDING && most <= ROUNDING;
    }
}
