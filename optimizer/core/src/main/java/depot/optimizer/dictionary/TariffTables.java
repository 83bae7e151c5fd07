package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.defaulted;
import static depot.optimizer.dictionary.Field.optional;
import static depot.optimizer.dictionary.Field.required;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;

/** What electricity costs: {@code tariffs.csv}, {@code tariff_terms.csv}. */
public final class TariffTables {
    private TariffTables() {}

    /** {@code tariffs.csv}. */
    public static final class Tariffs {
        public static final Field<String> TARIFF =
                required("tariff", ValueType.key(), Units.NONE, "name of the tariff; it has one row per price band");
        public static final Field<String> SEASON = optional(
                "season",
                ValueType.referenceTo(RouteTables.Seasons.SEASON),
                Units.NONE,
                "season in which the band holds; blank: all of them");
        public static final Field<Set<DayOfWeek>> DAYS =
                required("days", ValueType.days(), Units.NONE, "days on which the band holds");
        public static final Field<Integer> FROM =
                required("from", ValueType.timeUpTo(Units.MIDNIGHT), Units.TIME, "start of the band");
        public static final Field<Integer> TO =
                required("to", ValueType.timeUpTo(Units.MIDNIGHT), Units.TIME, "end of the band, up to 24:00");
        public static final Field<BigDecimal> PRICE_PER_KWH = required(
                "price_per_kwh",
                ValueType.money(Range.atLeast("0").atMost("1000000")),
                "currency/kWh",
                "price of energy in the band");

        public static final Table TABLE = new Table(
                "tariffs.csv",
                Presence.REQUIRED,
                "price band of a tariff; the bands of a tariff cover each day of the week from 00:00 to 24:00 once",
                List.of(),
                List.of(TARIFF, SEASON, DAYS, FROM, TO, PRICE_PER_KWH));

        private Tariffs() {}
    }

    /** {@code tariff_terms.csv}. */
    public static final class Terms {
        public static final Field<String> TARIFF =
                required("tariff", ValueType.referenceTo(Tariffs.TARIFF), Units.NONE, "the tariff");
        public static final Field<BigDecimal> STANDING_PER_DAY = defaulted(
                "standing_per_day",
                ValueType.money(Units.PRICE),
                "currency/day",
                "0",
                "standing charge, paid each day of the year");
        public static final Field<BigDecimal> DEMAND_PRICE_PER_KW_MONTH = defaulted(
                "demand_price_per_kw_month",
                ValueType.money(Units.PRICE),
                "currency/kW/month",
                "0",
                "demand charge, paid each month for its highest average draw");
        public static final Field<Integer> DEMAND_MINUTES = defaulted(
                "demand_minutes",
                ValueType.oneOf(List.of(1, 5, 10, 15, 20, 30, 60)),
                Units.MINUTES,
                "15",
                "length of the averages of the demand charge");

        public static final Table TABLE = new Table(
                "tariff_terms.csv",
                Presence.OPTIONAL,
                "tariff that bills more than energy",
                List.of(TARIFF),
                List.of(TARIFF, STANDING_PER_DAY, DEMAND_PRICE_PER_KW_MONTH, DEMAND_MINUTES));

        private Terms() {}
    }
}
