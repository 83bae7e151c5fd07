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

    public static final Field<Double> TAX_RATE = defaulted(
            "finance.tax_rate",
            ValueType.decimal(Range.atLeast("0").below("1")),
            Units.NONE,
            "0",
            "tax on profits; 0.25 is a quarter of them");
    public static final Field<String> DEPRECIATION = optional(
            "finance.depreciation",
            ValueType.referenceTo(FinanceTables.Depreciation.SCHEDULE),
            Units.NONE,
            "schedule by which purchases are written off before tax; blank: they are not");
    public static final Field<BigDecimal> PETROL_PRICE_PER_LITRE = optional(
            "finance.petrol_price_per_litre",
            ValueType.money(Units.PRICE),
            "currency/l",
            "price of petrol; blank: what crews' petrol costs is not parted into fuel and upkeep");
    public static final Field<Double> PETROL_PRICE_GROWTH = defaulted(
            "finance.petrol_price_growth",
            ValueType.decimal(Range.atLeast("-0.5").atMost("1")),
            "per year",
            "0",
            "yearly rise of the price of petrol; 0.02 is two per cent");
    public static final Field<Double> PETROL_KG_CO2_PER_LITRE = defaulted(
            "finance.petrol_kg_co2_per_litre",
            ValueType.decimal(Range.atLeast("0").atMost("10")),
            "kg/l",
            "2.3477",
            "carbon dioxide from burning petrol (EPA-420-F-11-041: 8887 g per US gallon)");
    public static final Field<Double> GRID_KG_CO2_PER_KWH = optional(
            "finance.grid_kg_co2_per_kwh",
            ValueType.decimal(Range.atLeast("0").atMost("10")),
            "kg/kWh",
            "carbon dioxide from making electricity; blank: not known");
    public static final Field<BigDecimal> CARBON_PRICE_PER_TONNE = optional(
            "finance.carbon_price_per_tonne",
            ValueType.money(Units.PRICE),
            "currency/t",
            "what a tonne of carbon dioxide costs; blank: nothing");

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
                    TAX_RATE,
                    DEPRECIATION,
                    PETROL_PRICE_PER_LITRE,
                    PETROL_PRICE_GROWTH,
                    PETROL_KG_CO2_PER_LITRE,
                    GRID_KG_CO2_PER_KWH,
                    CARBON_PRICE_PER_TONNE,
                    GAP,
                    NODES,
                    TIME_LIMIT_SECONDS,
                    THREADS,
                    SEED,
                    HANDOVER_MINUTES));

    private Settings() {}
}
