package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.util.List;

/** What is charged and what charges it: {@code pack_types.csv}, {@code charger_types.csv}, {@code charge_times.csv}. */
public final class EquipmentTables {
    private EquipmentTables() {}

    /** {@code pack_types.csv}. */
    public static final class PackTypes {
        public static final Field<String> PACK_TYPE =
                required("pack_type", ValueType.key(), Units.NONE, "key of the pack type");
        public static final Field<String> FAMILY = required(
                "family", ValueType.key(), Units.NONE, "packs of one family fit the same tools; any name you like");
        public static final Field<Double> CAPACITY_WH =
                required("capacity_wh", ValueType.decimal(Units.ENERGY), Units.WATT_HOURS, "rated energy when new");
        public static final Field<Double> USABLE_SHARE = required(
                "usable_share",
                ValueType.decimal(Units.SHARE),
                Units.NONE,
                "share of the rated energy that a tool can draw");
        public static final Field<Double> WEIGHT_KG =
                required("weight_kg", ValueType.decimal(Units.WEIGHT), Units.KILOGRAMS, "weight of one pack");
        public static final Field<BigDecimal> PRICE =
                required("price", ValueType.money(Units.PRICE), Units.MONEY, "price of one pack");
        public static final Field<Double> CYCLE_LIFE = required(
                "cycle_life",
                ValueType.decimal(Range.atLeast("1").atMost("100000")),
                "full charges",
                "charges until it is replaced");
        public static final Field<Double> CALENDAR_YEARS = required(
                "calendar_years",
                ValueType.decimal(Units.LIFE),
                Units.YEARS,
                "years until it is replaced, whatever its use");

        public static final Table TABLE = new Table(
                "pack_types.csv",
                Presence.REQUIRED,
                "kind of battery pack",
                List.of(PACK_TYPE),
                List.of(PACK_TYPE, FAMILY, CAPACITY_WH, USABLE_SHARE, WEIGHT_KG, PRICE, CYCLE_LIFE, CALENDAR_YEARS));

        private PackTypes() {}
    }

    /** {@code charger_types.csv}. */
    public static final class ChargerTypes {
        public static final Field<String> CHARGER_TYPE =
                required("charger_type", ValueType.key(), Units.NONE, "key of the charger type");
        public static final Field<Integer> BAYS =
                required("bays", ValueType.integer(Units.COUNT), Units.NONE, "packs that it holds");
        public static final Field<Integer> CHARGING_AT_ONCE = required(
                "charging_at_once",
                ValueType.integer(Units.COUNT),
                Units.NONE,
                "packs that it charges together; fewer than its bays: the others wait their turn");
        public static final Field<Double> PLATE_WATTS = required(
                "plate_watts",
                ValueType.decimal(Units.POWER),
                Units.WATTS,
                "rated input power, all bays that charge at once");
        public static final Field<Double> EFFICIENCY = required(
                "efficiency",
                ValueType.decimal(Units.SHARE),
                Units.NONE,
                "energy into packs per energy from the mains");
        public static final Field<Integer> PLACES = required(
                "places",
                ValueType.integer(Range.atLeast("0").atMost("1000")),
                Units.NONE,
                "wall or bench places that it takes");
        public static final Field<Boolean> PORTABLE =
                required("portable", ValueType.yesNo(), Units.NONE, "whether a crew may carry it");
        public static final Field<Double> WEIGHT_KG = defaulted(
                "weight_kg",
                ValueType.decimal(Range.atLeast("0").atMost("10000")),
                Units.KILOGRAMS,
                "0",
                "weight when carried");
        public static final Field<BigDecimal> PRICE =
                required("price", ValueType.money(Units.PRICE), Units.MONEY, "price of one charger");
        public static final Field<BigDecimal> INSTALL_COST = defaulted(
                "install_cost", ValueType.money(Units.PRICE), Units.MONEY, "0", "price of mounting one at a depot");
        public static final Field<Double> LIFE_YEARS =
                required("life_years", ValueType.decimal(Units.LIFE), Units.YEARS, "years until it is replaced");

        public static final Table TABLE = new Table(
                "charger_types.csv",
                Presence.REQUIRED,
                "kind of charger",
                List.of(CHARGER_TYPE),
                List.of(
                        CHARGER_TYPE,
                        BAYS,
                        CHARGING_AT_ONCE,
                        PLATE_WATTS,
                        EFFICIENCY,
                        PLACES,
                        PORTABLE,
                        WEIGHT_KG,
                        PRICE,
                        INSTALL_COST,
                        LIFE_YEARS));

        private ChargerTypes() {}
    }

    /** {@code charge_times.csv}. */
    public static final class ChargeTimes {
        public static final Field<String> CHARGER_TYPE =
                required("charger_type", ValueType.referenceTo(ChargerTypes.CHARGER_TYPE), Units.NONE, "the charger");
        public static final Field<String> PACK_TYPE =
                required("pack_type", ValueType.referenceTo(PackTypes.PACK_TYPE), Units.NONE, "the pack in it");
        public static final Field<Integer> MINUTES_TO_80 = required(
                "minutes_to_80",
                ValueType.integer(Units.DAY_MINUTES),
                Units.MINUTES,
                "from empty to 80 % of the pack's energy");
        public static final Field<Integer> MINUTES_TO_FULL =
                required("minutes_to_full", ValueType.integer(Units.DAY_MINUTES), Units.MINUTES, "from empty to full");

        public static final Table TABLE = new Table(
                "charge_times.csv",
                Presence.REQUIRED,
                "charger type and pack type that fits it",
                List.of(CHARGER_TYPE, PACK_TYPE),
                List.of(CHARGER_TYPE, PACK_TYPE, MINUTES_TO_80, MINUTES_TO_FULL));

        private ChargeTimes() {}
    }
}
