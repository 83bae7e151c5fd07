package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;

/** The depots and their wiring: {@code depots.csv}, {@code circuits.csv}, {@code base_load.csv}. */
public final class DepotTables {
    private static final List<Integer> PHASE_COUNTS = List.of(1, 3);

    private DepotTables() {}

    /** {@code depots.csv}. */
    public static final class Depots {
        public static final Field<String> DEPOT = required("depot", ValueType.key(), Units.NONE, "key of the depot");
        public static final Field<String> NAME =
                required("name", ValueType.text(), Units.NONE, "name printed in reports");
        public static final Field<String> REGION =
                optional("region", ValueType.text(), Units.NONE, "region that reports group it under");
        public static final Field<Double> LATITUDE = optional(
                "latitude",
                ValueType.decimal(Range.atLeast("-90").atMost("90")),
                "degrees",
                "for maps; north is positive");
        public static final Field<Double> LONGITUDE = optional(
                "longitude",
                ValueType.decimal(Range.atLeast("-180").atMost("180")),
                "degrees",
                "for maps; east is positive");
        public static final Field<String> TARIFF = required(
                "tariff",
                ValueType.referenceTo(TariffTables.Tariffs.TARIFF),
                Units.NONE,
                "what the depot pays for electricity");
        public static final Field<Double> SUPPLY_VOLTS = required(
                "supply_volts",
                ValueType.decimal(Units.VOLTAGE),
                Units.VOLTS,
                "voltage of the main connection, line to line when it has three phases");
        public static final Field<Integer> SUPPLY_PHASES =
                required("supply_phases", ValueType.oneOf(PHASE_COUNTS), Units.NONE, "phases of the main connection");
        public static final Field<Double> SUPPLY_AMPS =
                required("supply_amps", ValueType.decimal(Units.CURRENT), Units.AMPS, "rating of the main protection");
        public static final Field<Integer> PLACES = required(
                "places",
                ValueType.integer(Range.atLeast("0").atMost("100000")),
                Units.NONE,
                "wall or bench places for chargers");
        public static final Field<Integer> STAFFED_FROM = optional(
                "staffed_from",
                ValueType.timeUpTo(Units.MIDNIGHT),
                Units.TIME,
                "start of the hours in which somebody is there to move packs; blank: never");
        public static final Field<Integer> STAFFED_TO =
                optional("staffed_to", ValueType.timeUpTo(Units.MIDNIGHT), Units.TIME, "end of the staffed hours");
        public static final Field<Integer> SWAP_MINUTES = optional(
                "swap_minutes",
                ValueType.integer(Units.DAY_MINUTES),
                Units.MINUTES,
                "in staffed hours packs are moved every so many minutes; blank: 60 when the depot is staffed");
        public static final Field<Double> SUPPLY_UPGRADE_AMPS = optional(
                "supply_upgrade_amps",
                ValueType.decimal(Units.CURRENT),
                Units.AMPS,
                "rating of a bigger supply on offer; blank: none");
        public static final Field<BigDecimal> SUPPLY_UPGRADE_COST = optional(
                "supply_upgrade_cost", ValueType.money(Units.PRICE), Units.MONEY, "price of the bigger supply");

        public static final Table TABLE = new Table(
                "depots.csv",
                Presence.REQUIRED,
                "depot",
                List.of(DEPOT),
                List.of(
                        DEPOT,
                        NAME,
                        REGION,
                        LATITUDE,
                        LONGITUDE,
                        TARIFF,
                        SUPPLY_VOLTS,
                        SUPPLY_PHASES,
                        SUPPLY_AMPS,
                        PLACES,
                        STAFFED_FROM,
                        STAFFED_TO,
                        SWAP_MINUTES,
                        SUPPLY_UPGRADE_AMPS,
                        SUPPLY_UPGRADE_COST));

        private Depots() {}
    }

    /** {@code circuits.csv}. */
    public static final class Circuits {
        public static final Field<String> CIRCUIT =
                required("circuit", ValueType.key(), Units.NONE, "key of the circuit, unique over all depots");
        public static final Field<String> DEPOT =
                required("depot", ValueType.referenceTo(Depots.DEPOT), Units.NONE, "where it is");
        public static final Field<Double> VOLTS = required(
                "volts",
                ValueType.decimal(Units.VOLTAGE),
                Units.VOLTS,
                "its voltage, line to line when it has three phases");
        public static final Field<Integer> PHASES =
                required("phases", ValueType.oneOf(PHASE_COUNTS), Units.NONE, "phases of the circuit");
        public static final Field<Double> BREAKER_AMPS =
                required("breaker_amps", ValueType.decimal(Units.CURRENT), Units.AMPS, "rating of its breaker");
        public static final Field<Integer> OUTLETS = required(
                "outlets", ValueType.integer(Range.atLeast("0").atMost("1000")), Units.NONE, "how many plugs fit");
        public static final Field<Double> PLUG_AMPS = optional(
                "plug_amps",
                ValueType.decimal(Units.CURRENT),
                Units.AMPS,
                "most that one plug may draw; blank: as the breaker");
        public static final Field<Double> CONTINUOUS_FACTOR = defaulted(
                "continuous_factor",
                ValueType.decimal(Units.SHARE),
                Units.NONE,
                "0.8",
                "share of the breaker's rating that may be drawn for hours");
        public static final Field<Double> POWER_FACTOR = defaulted(
                "power_factor", ValueType.decimal(Units.SHARE), Units.NONE, "1", "power factor of the chargers on it");
        public static final Field<BigDecimal> INSTALL_COST = defaulted(
                "install_cost",
                ValueType.money(Units.PRICE),
                Units.MONEY,
                "0",
                "price of building it; 0: it exists already");

        public static final Table TABLE = new Table(
                "circuits.csv",
                Presence.REQUIRED,
                "circuit of a depot",
                List.of(CIRCUIT),
                List.of(
                        CIRCUIT,
                        DEPOT,
                        VOLTS,
                        PHASES,
                        BREAKER_AMPS,
                        OUTLETS,
                        PLUG_AMPS,
                        CONTINUOUS_FACTOR,
                        POWER_FACTOR,
                        INSTALL_COST));

        private Circuits() {}
    }

    /** {@code base_load.csv}. */
    public static final class BaseLoads {
        public static final Field<String> DEPOT =
                required("depot", ValueType.referenceTo(Depots.DEPOT), Units.NONE, "whose load it is");
        public static final Field<String> CIRCUIT = optional(
                "circuit",
                ValueType.referenceTo(Circuits.CIRCUIT),
                Units.NONE,
                "circuit that feeds it; blank: it sits on the supply, outside the listed circuits");
        public static final Field<Set<DayOfWeek>> DAYS =
                required("days", ValueType.days(), Units.NONE, "days on which it is there");
        public static final Field<Integer> FROM =
                required("from", ValueType.timeUpTo(Units.MIDNIGHT), Units.TIME, "start of the span");
        public static final Field<Integer> TO =
                required("to", ValueType.timeUpTo(Units.MIDNIGHT), Units.TIME, "end of the span, up to 24:00");
        public static final Field<Double> AMPS = required(
                "amps",
                ValueType.decimal(Range.atLeast("0").atMost("10000")),
                Units.AMPS,
                "current at the voltage of the circuit or supply");

        public static final Table TABLE = new Table(
                "base_load.csv",
                Presence.OPTIONAL,
                "load that a circuit or supply already feeds, and span of the day; spans must not overlap",
                List.of(),
                List.of(DEPOT, CIRCUIT, DAYS, FROM, TO, AMPS));

        private BaseLoads() {}
    }
}
