package depot.optimizer.solve;

/**
 * How much of a shared limit a depot's plans may use, when that is settled for it.
 *
 * @param least at least this much
 * @param most at most this much
 */
public record UseRange(double least, double most) {

    /** No more than an amount. */
    public static UseRange upTo(double most) {
        return new UseRange(Double.NEGATIVE_INFINITY, most);
    }

    /** An amount, neither more nor less. */
    public static UseRange exactly(double amount) {
        return new UseRange(amount, amount);
    }
}
