package depot.optimizer.report.table;

import java.math.BigDecimal;

/**
 * Pieces of one item that a depot needs in a phase.
 *
 * @param needed pieces in use, owned ones included
 * @param owned pieces in use that are there already, owned or bought in an earlier phase
 * @param unitPrice price of a piece, without installation
 * @param installCost installation of a piece
 */
public record Purchase(
        String phase,
        String depot,
        Kind kind,
        String item,
        int needed,
        int owned,
        BigDecimal unitPrice,
        BigDecimal installCost) {

    /** Pieces to buy. */
    public int bought() {
        return needed - owned;
    }

    /** What the bought pieces cost at once, installation included. */
    public BigDecimal total() {
        return unitPrice.add(installCost).multiply(BigDecimal.valueOf(bought()));
    }

    /** What can be bought, in the order in which it is listed. */
    public enum Kind {
        /** Battery packs. */
        PACK("pack"),
        /** Chargers mounted in the depot. */
        CHARGER("charger"),
        /** Chargers that crews carry. */
        PORTABLE_CHARGER("portable charger"),
        /** Load-sharing units. */
        SHARING_UNIT("load-sharing unit"),
        /** Portable stores. */
        POWER_BANK("power bank"),
        /** Circuits to build. */
        CIRCUIT("new circuit"),
        /** A bigger supply. */
        SUPPLY("supply upgrade");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In plain words. */
        public String words() {
            return words;
        }
    }
}
