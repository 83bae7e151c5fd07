package depot.optimizer.tariff;

import depot.optimizer.dictionary.BadValueException;
import depot.optimizer.dictionary.TariffTables.Terms;
import depot.optimizer.tariff.ImportRequest.KilovoltAmperes;
import java.math.BigDecimal;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads the demand charge. A record has up to two structures: one for the month (flat), and one by time of day, which comes to the same
 * when one period fills the whole month. What they charge is added up.
 */
final class DemandReader {
    static final String FLAT = "flatdemandstructure";
    static final String FLAT_MONTHS = "flatdemandmonths";
    static final String FLAT_UNIT = "flatdemandunit";
    static final String TIMED = "demandratestructure";
    static final String TIMED_WEEKDAYS = "demandweekdayschedule";
    static final String TIMED_WEEKENDS = "demandweekendschedule";
    static final String TIMED_UNIT = "demandrateunit";
    static final String WINDOW = "demandwindow";

    private static final String ONE_PRICE =
            "a tariff of a scenario has one demand price, for every hour of every month";

    private final RateFields fields;
    private final Remarks remarks;
    private final KilovoltAmperes kilovoltAmperes;
    private final Map<Month, BigDecimal> prices = new EnumMap<>(Month.class);
    private final List<String> charging = new ArrayList<>();

    private DemandReader(RateFields fields, Set<Month> months, KilovoltAmperes kilovoltAmperes) {
        this.fields = fields;
        this.remarks = fields.remarks();
        this.kilovoltAmperes = kilovoltAmperes;
        months.forEach(month -> prices.put(month, BigDecimal.ZERO));
    }

    /** The charge in these months, or empty after telling all that is wrong. */
    static Optional<DemandCharge> read(RateFields fields, Set<Month> months, KilovoltAmperes kilovoltAmperes) {
        return new DemandReader(fields, months, kilovoltAmperes).charge();
    }

    private Optional<DemandCharge> charge() {
        long before = remarks.errors();
        flat();
        timed();
        if (remarks.errors() == before) {
            requireOnePrice();
        }
        int minutes = charging.isEmpty() ? Integer.parseInt(defaultMinutes()) : minutes();
        BigDecimal price = prices.values().stream().findFirst().orElse(BigDecimal.ZERO);
        return remarks.errors() == before ? Optional.of(new DemandCharge(price, minutes)) : Optional.empty();
    }

    private void flat() {
        Optional<List<List<Tier>>> structure = fields.structure(FLAT).filter(periods -> !periods.isEmpty());
        if (structure.isEmpty() || !areThere(FLAT, FLAT_MONTHS)) {
            return;
        }
        fields.monthlyPeriods(FLAT_MONTHS, structure.get().size()).ifPresent(row -> {
            Map<Month, Set<Integer>> used = new EnumMap<>(Month.class);
            prices.keySet().forEach(month -> used.put(month, Set.of(row.get(Months.row(month)))));
            add(structure.get(), FLAT, FLAT_UNIT, used);
        });
    }

    private void timed() {
        Optional<List<List<Tier>>> structure = fields.structure(TIMED).filter(periods -> !periods.isEmpty());
        if (structure.isEmpty() || !areThere(TIMED, TIMED_WEEKDAYS, TIMED_WEEKENDS)) {
            return;
        }
        int size = structure.get().size();
        Optional<List<List<Integer>>> weekdays = fields.schedule(TIMED_WEEKDAYS, size);
        Optional<List<List<Integer>>> weekends = fields.schedule(TIMED_WEEKENDS, size);
        if (weekdays.isEmpty() || weekends.isEmpty()) {
            return;
        }
        Map<Month, Set<Integer>> used = new EnumMap<>(Month.class);
        for (Month month : prices.keySet()) {
            Set<Integer> periods = new TreeSet<>(weekdays.get().get(Months.row(month)));
            periods.addAll(weekends.get().get(Months.row(month)));
            used.put(month, periods);
        }
        add(structure.get(), TIMED, TIMED_UNIT, used);
    }

    /** Each period is billed for its own peak: two of them, even at one price, are not one charge for the month's peak. */
    private void add(List<List<Tier>> structure, String field, String unit, Map<Month, Set<Integer>> used) {
        Set<Integer> all = new TreeSet<>();
        used.values().forEach(all::addAll);
        Optional<PeriodPrices> periods = PeriodPrices.of(structure, field, all, fields);
        if (periods.isEmpty()
                || all.stream().allMatch(period -> periods.get().of(period).signum() == 0)) {
            return;
        }
        charging.add(field);
        requireKilowatts(unit);
        Set<Month> split = new TreeSet<>();
        used.forEach((month, numbers) -> {
            boolean charged =
                    numbers.stream().anyMatch(period -> periods.get().of(period).signum() != 0);
            if (charged && numbers.size() > 1) {
                split.add(month);
            } else if (charged) {
                prices.merge(month, periods.get().of(numbers.iterator().next()), DemandReader::sum);
            }
        });
        if (!split.isEmpty()) {
            String message = "the demand charge depends on the time of day in " + Months.text(split);
            remarks.error(field, fields.line(field), message, ONE_PRICE);
        }
    }

    private boolean areThere(String structure, String... schedules) {
        long before = remarks.errors();
        for (String schedule : schedules) {
            if (fields.find(schedule).isEmpty()) {
                String message = "the record does not have it, but has " + structure;
                String hint = "it says which price holds when; complete it, or delete " + structure;
                remarks.error(schedule, fields.line(structure), message, hint);
            }
        }
        return remarks.errors() == before;
    }

    private void requireOnePrice() {
        String field = charging.isEmpty() ? FLAT : charging.get(0);
        Map<BigDecimal, Set<Month>> alike = Months.alike(prices.keySet(), prices::get);
        if (alike.size() > 1) {
            List<String> parts = new ArrayList<>();
            alike.forEach((price, months) -> parts.add(Months.text(months) + ": " + price.toPlainString()));
            String message = "the demand price differs by month (" + String.join("; ", parts) + ")";
            remarks.error(field, fields.line(field), message, ONE_PRICE);
        }
        alike.forEach((price, months) -> {
            if (price.signum() < 0) {
                String message = "rate and adj come to less than nothing in %s: %s"
                        .formatted(Months.text(months), price.toPlainString());
                remarks.error(field, fields.line(field), message, "a price of a scenario is 0 or more");
            }
        });
    }

    private void requireKilowatts(String field) {
        String unit = fields.text(field).orElse("");
        int line = fields.line(field);
        if (unit.isEmpty()) {
            remarks.notice(field, line, "the record does not name the unit of the demand price", "it is taken as kW");
        } else if (unit.equals("kVA") && kilovoltAmperes == KilovoltAmperes.AS_KILOWATTS) {
            remarks.notice(field, line, "the price per kVA is taken as one per kW", "right at a power factor of 1");
        } else if (unit.equals("kVA")) {
            String hint = "--kva-as-kw takes it as one per kW, which is right at a power factor of 1";
            remarks.error(field, line, "the demand price is per kVA", hint);
        } else if (!unit.equals("kW")) {
            remarks.error(field, line, "the demand price is per " + unit, "a scenario has prices per kW and month");
        }
    }

    private int minutes() {
        Optional<BigDecimal> window = fields.number(WINDOW);
        String text =
                window.map(number -> Amounts.plain(number).toPlainString()).orElse(defaultMinutes());
        if (window.isEmpty()) {
            String message = "the record does not say over how many minutes demand is averaged";
            remarks.notice(WINDOW, fields.line(WINDOW), message, text + " minutes are taken");
        }
        try {
            return Terms.DEMAND_MINUTES.type().parse(text);
        } catch (BadValueException other) {
            String message = "demand is averaged over " + text + " minutes, which a scenario cannot say";
            remarks.error(WINDOW, fields.line(WINDOW), message, other.hint());
            return 0;
        }
    }

    private static String defaultMinutes() {
        return Terms.DEMAND_MINUTES.defaultText().orElseThrow();
    }

    private static BigDecimal sum(BigDecimal one, BigDecimal other) {
        return Amounts.plain(one.add(other));
    }
}
