package depot.optimizer.tariff;

import depot.optimizer.read.JsonValue;
import depot.optimizer.read.JsonValue.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fields of a record by their names in the open format, typed. What is not of its type is told and counts as missing. Null and empty lists
 * are missing too: databases write them for fields that nobody filled in.
 */
final class RateFields {
    static final int MONTHS = 12;
    static final int HOURS = 24;

    /** Larger and smaller numbers are slips, and writing them out could take all memory. */
    private static final int MOST_DIGITS = 60;

    private static final String EACH_MONTH = "one number for each month, from January";
    private static final String EACH_HOUR = "one number for each hour, from midnight";

    private final JsonValue record;
    private final Remarks remarks;

    RateFields(JsonValue record, Remarks remarks) {
        this.record = record;
        this.remarks = remarks;
    }

    /** Where findings go. */
    Remarks remarks() {
        return remarks;
    }

    /** Line of a field, or of the record when it has none of that name. */
    int line(String field) {
        return find(field).orElse(record).line();
    }

    /** A field that is there and holds something. */
    Optional<JsonValue> find(String field) {
        return find(record, field);
    }

    /** A text, empty: missing or blank. */
    Optional<String> text(String field) {
        return find(field)
                .filter(value -> is(value, Kind.TEXT, field))
                .map(value -> value.text().strip())
                .filter(text -> !text.isEmpty());
    }

    /** A number. */
    Optional<BigDecimal> number(String field) {
        return find(field).flatMap(value -> number(value, field));
    }

    /** A number for each month of the year. */
    Optional<List<BigDecimal>> monthly(String field) {
        return find(field).flatMap(list -> row(list, field, MONTHS, EACH_MONTH)).flatMap(row -> numbers(row, field));
    }

    /** A period number, from 0, for each month of the year; only those below {@code periods} are numbers of periods. */
    Optional<List<Integer>> monthlyPeriods(String field, int periods) {
        return find(field)
                .flatMap(list -> row(list, field, MONTHS, EACH_MONTH))
                .flatMap(row -> periods(row, field, periods));
    }

    /** A period number, from 0, for each hour of a day of each month. */
    Optional<List<List<Integer>>> schedule(String field, int periods) {
        Optional<JsonValue> value = find(field).filter(list -> is(list, Kind.LIST, field));
        if (value.isEmpty() || !hasSize(value.get(), field, MONTHS, "a row for each month, from January")) {
            return Optional.empty();
        }
        List<List<Integer>> rows = new ArrayList<>();
        for (int month = 0; month < MONTHS; month++) {
            String place = field + "[" + month + "]";
            row(value.get().items().get(month), place, HOURS, EACH_HOUR)
                    .flatMap(row -> periods(row, place, periods))
                    .ifPresent(rows::add);
        }
        return rows.size() == MONTHS ? Optional.of(rows) : Optional.empty();
    }

    /** A structure of prices: periods, each a list of tiers. */
    Optional<List<List<Tier>>> structure(String field) {
        Optional<JsonValue> value = find(field).filter(list -> is(list, Kind.LIST, field));
        if (value.isEmpty()) {
            return Optional.empty();
        }
        long before = remarks.errors();
        List<List<Tier>> periods = new ArrayList<>();
        for (JsonValue period : value.get().items()) {
            String place = field + "[" + periods.size() + "]";
            List<Tier> tiers = new ArrayList<>();
            if (is(period, Kind.LIST, place)) {
                for (JsonValue tier : period.items()) {
                    tier(tier, place + "[" + tiers.size() + "]").ifPresent(tiers::add);
                }
            }
            periods.add(tiers);
        }
        return remarks.errors() == before ? Optional.of(periods) : Optional.empty();
    }

    private Optional<Tier> tier(JsonValue tier, String place) {
        if (!is(tier, Kind.OBJECT, place)) {
            return Optional.empty();
        }
        return Optional.of(new Tier(
                tier,
                place,
                member(tier, place, "rate"),
                member(tier, place, "adj"),
                member(tier, place, "sell"),
                find(tier, "unit").map(JsonValue::text)));
    }

    private Optional<BigDecimal> member(JsonValue object, String place, String name) {
        return find(object, name).flatMap(value -> number(value, place + "." + name));
    }

    private static Optional<JsonValue> find(JsonValue object, String name) {
        return Optional.ofNullable(object.members().get(name))
                .filter(value -> value.kind() != Kind.NOTHING)
                .filter(value -> value.kind() != Kind.LIST || !value.items().isEmpty());
    }

    private Optional<List<JsonValue>> row(JsonValue list, String place, int size, String what) {
        return is(list, Kind.LIST, place) && hasSize(list, place, size, what)
                ? Optional.of(list.items())
                : Optional.empty();
    }

    private Optional<List<BigDecimal>> numbers(List<JsonValue> row, String place) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (int index = 0; index < row.size(); index++) {
            number(row.get(index), place + "[" + index + "]").ifPresent(numbers::add);
        }
        return numbers.size() == row.size() ? Optional.of(numbers) : Optional.empty();
    }

    private Optional<List<Integer>> periods(List<JsonValue> row, String place, int periods) {
        List<Integer> numbers = new ArrayList<>();
        for (int index = 0; index < row.size(); index++) {
            JsonValue value = row.get(index);
            String field = place + "[" + index + "]";
            Optional<BigDecimal> number = number(value, field);
            if (number.isPresent() && isPeriod(number.get(), periods)) {
                numbers.add(number.get().intValue());
            } else if (number.isPresent()) {
                String known = periods == 0 ? "the record has no period" : "its periods go from 0 to " + (periods - 1);
                remarks.error(value, field, "the record has no such period", known);
            }
        }
        return numbers.size() == row.size() ? Optional.of(numbers) : Optional.empty();
    }

    private static boolean isPeriod(BigDecimal number, int periods) {
        boolean whole = number.signum() == 0 || number.stripTrailingZeros().scale() <= 0;
        return whole && number.signum() >= 0 && number.compareTo(BigDecimal.valueOf(periods)) < 0;
    }

    private Optional<BigDecimal> number(JsonValue value, String field) {
        if (!is(value, Kind.NUMBER, field)) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(value.text());
        if (number.precision() > MOST_DIGITS || Math.abs((long) number.scale()) > MOST_DIGITS) {
            remarks.error(value, field, "not a usable number", "prices have up to " + MOST_DIGITS + " digits");
            return Optional.empty();
        }
        return Optional.of(number);
    }

    private boolean is(JsonValue value, Kind kind, String field) {
        if (value.kind() == kind) {
            return true;
        }
        remarks.error(value, field, "not " + kind.words(), "the open format has " + kind.words() + " here");
        return false;
    }

    private boolean hasSize(JsonValue list, String field, int size, String what) {
        int items = list.items().size();
        if (items == size) {
            return true;
        }
        remarks.error(field, list.line(), "there are " + items + " items, not " + size, "the open format has " + what);
        return false;
    }
}
