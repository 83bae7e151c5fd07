package depot.optimizer.finance;

/**
 * Something paid once.
 *
 * @param years from now
 * @param amount paid; below 0: received
 */
public record Payment(Reason reason, double years, double amount) {

    /** What a payment is for. */
    public enum Reason {
        /** Price of what is bought now. */
        PURCHASE,
        /** Mounting and building. */
        INSTALLATION,
        /** Price of what follows a piece at the end of its life. */
        REPLACEMENT,
        /** What is left of a piece's price at the end of the horizon. */
        VALUE_AT_END,
        /** What comes every year. */
        RUNNING
    }
}
