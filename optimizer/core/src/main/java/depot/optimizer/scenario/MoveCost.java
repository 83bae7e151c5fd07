package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * An item whose owned pieces may be moved to another depot instead of buying one there; other items stay where they are.
 *
 * @param item id of a pack, charger, sharing-unit or power-bank type
 * @param cost of moving one piece, whatever the way
 */
public record MoveCost(String item, BigDecimal cost) {}
