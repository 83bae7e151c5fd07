package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.util.List;

/** Who works with what: {@code tools.csv}, {@code crews.csv}, {@code crew_bases.csv}. */
public final class CrewTables {
    private CrewTables() {}

    /** {@code tools.csv}. */
    public static final class Tools {
        public static final Field<String> TOOL = required("tool", ValueType.key(), Units.NONE, "key of the tool");
        public static final Field<String> FAMILY = required(
                "family", ValueType.key(), Units.NONE, "family of the packs that fit it, as in pack_types.csv");
        public static final Field<Double> AVERAGE_WATTS = required(
                "average_watts",
                ValueType.decimal(Units.POWER),
                Units.WATTS,
                "average draw from the pack while it runs");
        public static final Field<Double> PETROL_LITRES_PER_HOUR = optional(
                "petrol_litres_per_hour",
                ValueType.decimal(Range.atLeast("0").atMost("100")),
                "l/h",
                "what the petrol tool that it replaces burns");

        public static final Table TABLE = new Table(
                "tools.csv",
                Presence.REQUIRED,
                "cordless tool",
                List.of(TOOL),
                List.of(TOOL, FAMILY, AVERAGE_WATTS, PETROL_LITRES_PER_HOUR));

        private Tools() {}
    }

    /** {@code crews.csv}. */
    public static final class Crews {
        public static final Field<String> CREW = required("crew", ValueType.key(), Units.NONE, "key of the crew");
        public static final Field<String> DEPOT = required(
                "depot",
                ValueType.referenceTo(DepotTables.Depots.DEPOT),
                Units.NONE,
                "depot that it works from, unless crew_bases.csv lets it work from another");
        public static final Field<Integer> PACK_PLACES = required(
                "pack_places",
                ValueType.integer(Range.atLeast("0").atMost("1000")),
                Units.NONE,
                "packs that its vehicle holds");
        public static final Field<Double> PAYLOAD_KG = required(
                "payload_kg",
                ValueType.decimal(Range.atLeast("0").atMost("100000")),
                Units.KILOGRAMS,
                "weight of packs, portable chargers and power banks that it may carry");
        public static final Field<Double> VEHICLE_WATTS = defaulted(
                "vehicle_watts",
                ValueType.decimal(Units.POWER_OR_NONE),
                Units.WATTS,
                "0",
                "power that its vehicle gives to chargers during a trip; 0: none");
        public static final Field<BigDecimal> PETROL_COST_PER_YEAR = defaulted(
                "petrol_cost_per_year",
                ValueType.money(Units.PRICE),
                "currency/year",
                "0",
                "fuel and upkeep of its petrol tools, as long as it keeps them");

        public static final Table TABLE = new Table(
                "crews.csv",
                Presence.REQUIRED,
                "crew",
                List.of(CREW),
                List.of(CREW, DEPOT, PACK_PLACES, PAYLOAD_KG, VEHICLE_WATTS, PETROL_COST_PER_YEAR));

        private Crews() {}
    }

    /** {@code crew_bases.csv}. */
    public static final class CrewBases {
        public static final Field<String> CREW =
                required("crew", ValueType.referenceTo(Crews.CREW), Units.NONE, "the crew");
        public static final Field<String> DEPOT = required(
                "depot",
                ValueType.referenceTo(DepotTables.Depots.DEPOT),
                Units.NONE,
                "a depot that it could work from; from its own in crews.csv it always can");
        public static final Field<BigDecimal> COST_PER_YEAR = required(
                "cost_per_year",
                ValueType.money(Units.PRICE),
                "currency/year",
                "what working from there costs, such as driving and rent; its own depot costs nothing without a row");

        public static final Table TABLE = new Table(
                "crew_bases.csv",
                Presence.OPTIONAL,
                "crew and depot that it could work from",
                List.of(CREW, DEPOT),
                List.of(CREW, DEPOT, COST_PER_YEAR));

        private CrewBases() {}
    }
}
