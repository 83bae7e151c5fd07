package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * A quantity price: all pieces of an item that the whole fleet buys in one phase cost it when they are enough. Tiers of
 * an item have rising counts and falling prices, each below the item's own price.
 *
 * @param item id of a pack, charger, sharing-unit or power-bank type
 * @param fromCount pieces in one phase from which on it holds, 2 or more
 * @param price of each piece, in place of the item's own
 */
public record PriceTier(String item, int fromCount, BigDecimal price) {}
