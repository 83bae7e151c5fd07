package depot.optimizer.check;

import depot.optimizer.dictionary.OrderTables.DeliveryLimits;
import depot.optimizer.dictionary.OrderTables.Moves;
import depot.optimizer.dictionary.OrderTables.PriceTiers;
import depot.optimizer.scenario.PriceTier;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;

/** Rules of quantity prices, of limits of delivery and of moves. */
final class OrderRules {
    private OrderRules() {}

    /** An item is a pack, charger, sharing-unit or power-bank type. */
    static void knownItems(Drafts drafts, Findings findings) {
        Items items = new Items(drafts);
        drafts.priceTiers.forEach(tier -> items.known(tier, PriceTiers.ITEM, findings));
        drafts.deliveryLimits.forEach(limit -> items.known(limit, DeliveryLimits.ITEM, findings));
        drafts.moves.forEach(move -> items.known(move, Moves.ITEM, findings));
    }

    /** A tier is cheaper than the item's own price: a discount that is none would be a slip. */
    static void belowOwnPrice(Drafts drafts, Findings findings) {
        Items items = new Items(drafts);
        for (Located<PriceTier> tier : drafts.priceTiers) {
            items.price(tier.value().item())
                    .filter(price -> tier.value().price().compareTo(price) >= 0)
                    .ifPresent(price -> findings.error(
                            tier,
                            PriceTiers.PRICE,
                            "not below the item's own price, " + price.toPlainString(),
                            "a quantity price is lower; delete the row if there is none"));
        }
    }

    /** From row to row of an item the counts rise and the prices fall. */
    static void countsRiseAndPricesFall(Drafts drafts, Findings findings) {
        Map<String, Located<PriceTier>> before = new HashMap<>();
        for (Located<PriceTier> tier : drafts.priceTiers) {
            Located<PriceTier> lower = before.put(tier.value().item(), tier);
            if (lower != null) {
                follows(lower, tier, findings);
            }
        }
    }

    private static void follows(Located<PriceTier> lower, Located<PriceTier> tier, Findings findings) {
        int count = lower.value().fromCount();
        BigDecimal price = lower.value().price();
        if (tier.value().fromCount() < count) {
            findings.error(
                    tier,
                    PriceTiers.FROM_COUNT,
                    "below " + count + " on line " + lower.row().line() + ", the row before of the item",
                    "list the tiers of an item by rising counts");
        } else if (tier.value().fromCount() > count && tier.value().price().compareTo(price) >= 0) {
            // The same count is told by the rule of keys.
            findings.error(
                    tier,
                    PriceTiers.PRICE,
                    "not below " + price.toPlainString() + ", the price from " + count + " on (line "
                            + lower.row().line() + ")",
                    "a higher count has a lower price; delete the row if it has not");
        }
    }
}
