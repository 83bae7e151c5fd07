package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.util.List;

/**
 * What the whole fleet orders and shares: {@code price_tiers.csv}, {@code delivery_limits.csv}, {@code moves.csv}.
 */
public final class OrderTables {
    private static final String ITEM_MEANING = "key of a pack, charger, sharing-unit or power-bank type";

    private OrderTables() {}

    /** {@code price_tiers.csv}. */
    public static final class PriceTiers {
        public static final Field<String> ITEM = required("item", ValueType.key(), Units.NONE, ITEM_MEANING);
        public static final Field<Integer> FROM_COUNT = required(
                "from_count",
                ValueType.integer(Range.atLeast("2").atMost("1000000")),
                Units.NONE,
                "pieces bought by the whole fleet in one phase from which on the price holds, for all of them; it rises "
                        + "from row to row of an item");
        public static final Field<BigDecimal> PRICE = required(
                "price",
                ValueType.money(Units.PRICE),
                Units.MONEY,
                "price of one piece; below the item's own price, and falling from row to row of an item");

        public static final Table TABLE = new Table(
                "price_tiers.csv",
                Presence.OPTIONAL,
                "item and count from which on it is cheaper",
                List.of(ITEM, FROM_COUNT),
                List.of(ITEM, FROM_COUNT, PRICE));

        private PriceTiers() {}
    }

    /** {@code delivery_limits.csv}. */
    public static final class DeliveryLimits {
        public static final Field<String> ITEM = required("item", ValueType.key(), Units.NONE, ITEM_MEANING);
        public static final Field<String> PHASE =
                required("phase", ValueType.referenceTo(RolloutTables.Phases.PHASE), Units.NONE, "the phase");
        public static final Field<Integer> COUNT = required(
                "count",
                ValueType.integer(Range.atLeast("0").atMost("1000000")),
                Units.NONE,
                "most pieces that can be delivered to the whole fleet in the phase; 0: none");

        public static final Table TABLE = new Table(
                "delivery_limits.csv",
                Presence.OPTIONAL,
                "item and phase in which not any number can be had",
                List.of(ITEM, PHASE),
                List.of(ITEM, PHASE, COUNT));

        private DeliveryLimits() {}
    }

    /** {@code moves.csv}. */
    public static final class Moves {
        public static final Field<String> ITEM = required("item", ValueType.key(), Units.NONE, ITEM_MEANING);
        public static final Field<BigDecimal> COST = required(
                "cost",
                ValueType.money(Units.PRICE),
                Units.MONEY,
                "cost of moving one piece that is in owned.csv to another depot instead of buying one there");

        public static final Table TABLE = new Table(
                "moves.csv",
                Presence.OPTIONAL,
                "item of which owned pieces may be moved to another depot; what is not listed stays where it is",
                List.of(ITEM),
                List.of(ITEM, COST));

        private Moves() {}
    }
}
