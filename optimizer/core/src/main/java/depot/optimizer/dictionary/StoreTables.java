package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.util.List;

/**
 * Equipment beside packs and chargers, and what is owned already: {@code sharing_units.csv}, {@code power_banks.csv},
 * {@code owned.csv}.
 */
public final class StoreTables {
    private StoreTables() {}

    /** {@code sharing_units.csv}. */
    public static final class SharingUnits {
        public static final Field<String> UNIT_TYPE =
                required("unit_type", ValueType.key(), Units.NONE, "key of the unit type");
        public static final Field<Integer> OUTLETS =
                required("outlets", ValueType.integer(Units.COUNT), Units.NONE, "chargers that fit behind it");
        public static final Field<Double> AMPS = required(
                "amps", ValueType.decimal(Units.CURRENT), Units.AMPS, "most that it draws, at the circuit's voltage");
        public static final Field<Integer> PRIORITY_OUTLETS = required(
                "priority_outlets",
                ValueType.integer(Range.atLeast("0").atMost("1000")),
                Units.NONE,
                "how many of the outlets are always fed first");
        public static final Field<BigDecimal> PRICE =
                required("price", ValueType.money(Units.PRICE), Units.MONEY, "price of one unit");
        public static final Field<BigDecimal> INSTALL_COST =
                defaulted("install_cost", ValueType.money(Units.PRICE), Units.MONEY, "0", "price of mounting it");
        public static final Field<Double> LIFE_YEARS =
                required("life_years", ValueType.decimal(Units.LIFE), Units.YEARS, "years until it is replaced");

        public static final Table TABLE = new Table(
                "sharing_units.csv",
                Presence.OPTIONAL,
                "kind of load-sharing unit",
                List.of(UNIT_TYPE),
                List.of(UNIT_TYPE, OUTLETS, AMPS, PRIORITY_OUTLETS, PRICE, INSTALL_COST, LIFE_YEARS));

        private SharingUnits() {}
    }

    /** {@code power_banks.csv}. */
    public static final class PowerBanks {
        public static final Field<String> BANK_TYPE =
                required("bank_type", ValueType.key(), Units.NONE, "key of the power-bank type");
        public static final Field<Double> ENERGY_WH =
                required("energy_wh", ValueType.decimal(Units.ENERGY), Units.WATT_HOURS, "energy that it holds");
        public static final Field<Double> OUTPUT_WATTS =
                required("output_watts", ValueType.decimal(Units.POWER), Units.WATTS, "most that it gives");
        public static final Field<Double> EFFICIENCY = required(
                "efficiency", ValueType.decimal(Units.SHARE), Units.NONE, "energy that it gives per energy taken out");
        public static final Field<Double> RECHARGE_WATTS = required(
                "recharge_watts", ValueType.decimal(Units.POWER), Units.WATTS, "power it draws while it is recharged");
        public static final Field<Integer> RECHARGE_MINUTES =
                required("recharge_minutes", ValueType.integer(Units.DAY_MINUTES), Units.MINUTES, "from empty to full");
        public static final Field<Double> WEIGHT_KG =
                required("weight_kg", ValueType.decimal(Units.WEIGHT), Units.KILOGRAMS, "weight when carried");
        public static final Field<BigDecimal> PRICE =
                required("price", ValueType.money(Units.PRICE), Units.MONEY, "price of one bank");
        public static final Field<Double> LIFE_YEARS =
                required("life_years", ValueType.decimal(Units.LIFE), Units.YEARS, "years until it is replaced");

        public static final Table TABLE = new Table(
                "power_banks.csv",
                Presence.OPTIONAL,
                "kind of portable power bank",
                List.of(BANK_TYPE),
                List.of(
                        BANK_TYPE,
                        ENERGY_WH,
                        OUTPUT_WATTS,
                        EFFICIENCY,
                        RECHARGE_WATTS,
                        RECHARGE_MINUTES,
                        WEIGHT_KG,
                        PRICE,
                        LIFE_YEARS));

        private PowerBanks() {}
    }

    /** {@code owned.csv}. */
    public static final class OwnedItems {
        public static final Field<String> DEPOT =
                required("depot", ValueType.referenceTo(DepotTables.Depots.DEPOT), Units.NONE, "where it is");
        public static final Field<String> CIRCUIT = optional(
                "circuit",
                ValueType.referenceTo(DepotTables.Circuits.CIRCUIT),
                Units.NONE,
                "circuit on which a charger or sharing unit is mounted; blank: in store");
        public static final Field<String> CREW = optional(
                "crew",
                ValueType.referenceTo(CrewTables.Crews.CREW),
                Units.NONE,
                "crew whose it is (packs that are not pooled, portable chargers, power banks); blank: the depot's");
        public static final Field<String> ITEM = required(
                "item", ValueType.key(), Units.NONE, "key of a pack, charger, sharing-unit or power-bank type");
        public static final Field<Integer> COUNT = required(
                "count", ValueType.integer(Range.atLeast("1").atMost("100000")), Units.NONE, "how many are there");

        public static final Table TABLE = new Table(
                "owned.csv",
                Presence.OPTIONAL,
                "depot and item that is owned already",
                List.of(DEPOT, CIRCUIT, CREW, ITEM),
                List.of(DEPOT, CIRCUIT, CREW, ITEM, COUNT));

        private OwnedItems() {}
    }
}
