package depot.optimizer.report.table;

import depot.optimizer.report.table.Purchase.Kind;
import java.math.BigDecimal;

/**
 * What a rerun does with one item in a depot.
 *
 * @param before pieces that the earlier plan has in use
 * @param held pieces that are there: listed as owned, or bought earlier
 * @param after pieces that the plan has in use
 * @param unitPrice price of a piece, without installation
 * @param installCost installation of a piece
 */
public record EquipmentLine(
        String depot,
        Kind kind,
        String item,
        int before,
        int held,
        int after,
        BigDecimal unitPrice,
        BigDecimal installCost) {

    /** Pieces to buy now. */
    public int bought() {
        return Math.max(0, after - held);
    }

    /** Pieces that are there and not in use. */
    public int idle() {
        return Math.max(0, held - after);
    }

    /** What is to be paid for it at once, installation included. */
    public BigDecimal total() {
        return unitPrice.add(installCost).multiply(BigDecimal.valueOf(bought()));
    }

    /** Whether the rerun changes anything about it. */
    public boolean changed() {
        return before != after || bought() > 0;
    }
}
