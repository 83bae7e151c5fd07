package depot.optimizer.plan;

/**
 * A cost that the fleet has as a whole.
 *
 * @param phase id of the phase
 * @param kind what it is
 * @param item id of the type
 * @param pieces how many
 * @param price paid for each when the phase begins; for a quantity price what each costs less than its own
 * @param presentCost below 0 for a reduction
 */
public record FleetCost(String phase, Kind kind, String item, int pieces, double price, double presentCost) {

    /** Kinds of cost. */
    public enum Kind {
        /** A quantity price is reached. */
        QUANTITY_PRICE,
        /** Pieces bought only to reach a quantity price; they are kept in store. */
        SPARE_PIECES
    }
}
