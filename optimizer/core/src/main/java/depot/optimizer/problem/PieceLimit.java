package depot.optimizer.problem;

/**
 * Most pieces of something that a plan may have, those that are there already included.
 *
 * @param kind what is limited
 * @param item id of its type or circuit, {@link #ANY}: all of the kind together
 * @param where circuit of a charger or unit, pool of packs, crew of what is carried; {@link #ANY}: the whole depot
 * @param most pieces, 0: none
 */
public record PieceLimit(Kind kind, String item, String where, int most) {

    /** In place of an item or of where it is. */
    public static final String ANY = "";

    /** What can be limited. */
    public enum Kind {
        /** Packs. */
        PACK,
        /** Chargers mounted in the depot. */
        CHARGER,
        /** Load-sharing units. */
        UNIT,
        /** Circuits that are to be built. */
        CIRCUIT,
        /** The bigger supply. */
        SUPPLY,
        /** Chargers that crews carry. */
        PORTABLE,
        /** Power banks. */
        BANK
    }

    /** Whether something counts against the limit. */
    public boolean covers(Kind other, String otherItem, String otherWhere) {
        return kind == other
                && (item.equals(ANY) || item.equals(otherItem))
                && (where.equals(ANY) || where.equals(otherWhere));
    }
}
