package depot.optimizer.dictionary;

import static depot.optimizer.dictionary.Field.required;

import java.util.List;

/** What finance needs beside prices: {@code depreciation.csv}. */
public final class FinanceTables {
    private FinanceTables() {}

    /** {@code depreciation.csv}. */
    public static final class Depreciation {
        public static final Field<String> SCHEDULE = required(
                "schedule",
                ValueType.key(),
                Units.NONE,
                "name of the schedule; it has one row per year of writing off");
        public static final Field<Integer> YEAR = required(
                "year",
                ValueType.integer(Range.atLeast("1").atMost("50")),
                Units.NONE,
                "years after the payment, counted from 1");
        public static final Field<Double> SHARE = required(
                "share",
                ValueType.decimal(Range.atLeast("0").atMost("1")),
                Units.NONE,
                "share of the price that is written off in that year; the shares of a schedule add to 1");

        public static final Table TABLE = new Table(
                "depreciation.csv",
                Presence.OPTIONAL,
                "depreciation schedule and year",
                List.of(SCHEDULE, YEAR),
                List.of(SCHEDULE, YEAR, SHARE));

        private Depreciation() {}
    }
}
