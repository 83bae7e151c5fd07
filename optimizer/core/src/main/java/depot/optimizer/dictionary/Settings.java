package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import depot.optimizer.scenario.PackSharing;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/** The settings of {@code scenario.json}. A name with a dot is a member of the object before the dot. */
public final class Settings {
    public static final Field<String> SCHEMA = optional(
            "$schema", ValueType.text(), Units.NONE, "path of scenario.schema.json, for editors; not read otherwise");
    public static final Field<String> NAME =
            required("name", ValueType.text(), Units.NONE, "name of the scenario, printed in reports");
    public static final Field<Currency> CURRENCY =
            required("currency", ValueType.currency(), Units.NONE, "currency of every amount, an ISO 4217 code");
    public static final Field<ZoneId> TIME_ZONE = required(
            "time_zone", ValueType.timeZone(), Units.NONE, "where the clocks of the depots are, like Europe/Berlin");
    public static final Field<Integer> HORIZON_YEARS = required(
            "horizon_years",
            ValueType.integer(Range.atLeast("1").atMost("40")),
            Units.YEARS,
            "years over which costs are counted");
    public static final Field<Double> DISCOUNT_RATE = required(
            "discount_rate", ValueType.decimal(Range.atLeast("0").atMost("1")), "per year", "0.05 is five per cent");
    public static final Field<Double> DEMAND_QUANTILE = defaulted(
            "demand_quantile",
            ValueType.decimal(Range.atLeast("0.5").below("1")),
            Units.NONE,
            "0.9",
            "share of days whose energy need a plan must cover; without a spread every day is the average day");
    public static final Field<Double> DEMAND_SPREAD = defaulted(
            "demand_spread",
            ValueType.decimal(Range.atLeast("0").atMost("2")),
            Units.NONE,
            "0",
            "standard deviation of the energy need of one stop, divided by its average");
    public static final Field<Double> PACK_HEALTH = defaulted(
            "pack_health",
            ValueType.decimal(Units.SHARE),
            Units.NONE,
            "1",
            "share of the new capacity that packs are planned to have left");
    public static final Field<PackSharing> PACK_SHARING = required(
            "pack_sharing",
            ValueType.choice(PackSharing.class),
            Units.NONE,
            "depot: all crews of a depot share its packs; crew: each crew has its own");
    public static final Field<Optional<BigDecimal>> SHORTAGE_COST_PER_KWH = defaulted(
            "shortage_cost_per_kwh",
            ValueType.moneyOr("forbid", Units.PRICE),
            "currency/kWh",
            "forbid",
            "price of energy that packs do not deliver; forbid: a plan must deliver all of it");
    public static final Field<Double> ELECTRICITY_PRICE_GROWTH = defaulted(
            "electricity_price_growth",
            ValueType.decimal(Range.atLeast("-0.5").atMost("1")),
            "per year",
            "0",
            "yearly rise of electricity prices; 0.02 is two per cent");

    public static final Field<Double> GAP = defaulted(
            "solve.gap",
            ValueType.decimal(Range.atLeast("0").below("1")),
            Units.NONE,
            "0.005",
            "gap between cost and proven bound at which a solve may stop; 0.005 is half a per cent");
    public static final Field<Long> NODES = defaulted(
            "solve.nodes",
            ValueType.whole(Range.atLeast("1").atMost("1000000000000")),
            Units.NONE,
            "20000",
            "branch-and-bound nodes per solve");
    public static final Field<Double> TIME_LIMIT_SECONDS = defaulted(
            "solve.time_limit_seconds",
            ValueType.decimal(Range.above("0").atMost("1000000")),
            "s",
            "120",
            "wall-clock backstop per depot");
    public static final Field<Integer> THREADS = defaulted(
            "solve.threads",
            ValueType.integer(Range.atLeast("1").atMost("256")),
            Units.NONE,
            "2",
            "depots solved side by side");
    public static final Field<Integer> SEED = defaulted(
            "solve.seed",
            ValueType.integer(Range.atLeast("0").atMost("2147483647")),
            Units.NONE,
            "1",
            "seed of tie-breaking and of every random draw");
    public static final Field<Integer> HANDOVER_MINUTES = defaulted(
            "solve.handover_minutes",
            ValueType.oneOf(List.of(1, 5, 10, 15, 20, 30, 60)),
            Units.MINUTES,
            "15",
            "handovers are rounded outward to a multiple of this");

    public static final Table TABLE = new Table(
            "scenario.json",
            Presence.REQUIRED,
            "scenario",
            List.of(),
            List.of(
                    SCHEMA,
                    NAME,
                    CURRENCY,
                    TIME_ZONE,
                    HORIZON_YEARS,
                    DISCOUNT_RATE,
                    DEMAND_QUANTILE,
                    DEMAND_SPREAD,
                    PACK_HEALTH,
                    PACK_SHARING,
                    SHORTAGE_COST_PER_KWH,
                    ELECTRICITY_PRICE_GROWTH,
                    GAP,
                    NODES,
                    TIME_LIMIT_SECONDS,
                    THREADS,
                    SEED,
                    HANDOVER_MINUTES));

    private Settings() {}
}
