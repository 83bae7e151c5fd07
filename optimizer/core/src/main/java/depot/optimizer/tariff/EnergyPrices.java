package depot.optimizer.tariff;

import java.math.BigDecimal;
import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What a kilowatt hour costs by month, kind of day and hour, in US dollars. */
final class EnergyPrices {
    static final String STRUCTURE = "energyratestructure";
    static final String WEEKDAYS = "energyweekdayschedule";
    static final String WEEKENDS = "energyweekendschedule";
    static final String FUEL = "fueladjustmentsmonthly";

    private static final List<BigDecimal> NO_FUEL = Collections.nCopies(RateFields.MONTHS, BigDecimal.ZERO);

    private final PeriodPrices periods;
    private final List<List<Integer>> weekdays;
    private final List<List<Integer>> weekends;
    private final List<BigDecimal> fuel;

    private EnergyPrices(
            PeriodPrices periods, List<List<Integer>> weekdays, List<List<Integer>> weekends, List<BigDecimal> fuel) {
        this.periods = periods;
        this.weekdays = weekdays;
        this.weekends = weekends;
        this.fuel = fuel;
    }

    /**
     * Prices of 24 hours, from midnight, of one day of each of the two kinds. Two are equal when the prices are, whatever their digits.
     */
    record Day(List<BigDecimal> weekday, List<BigDecimal> weekend) {}

    /** Reads them, or tells all that is wrong; only periods that the months use are looked at. */
    static Optional<EnergyPrices> read(RateFields fields, Set<Month> months) {
        long before = fields.remarks().errors();
        requireThere(fields);
        Optional<List<List<Tier>>> structure = fields.structure(STRUCTURE);
        int size = structure.map(List::size).orElse(Integer.MAX_VALUE);
        Optional<List<List<Integer>>> weekdays = fields.schedule(WEEKDAYS, size);
        Optional<List<List<Integer>>> weekends = fields.schedule(WEEKENDS, size);
        Optional<List<BigDecimal>> fuel = fields.monthly(FUEL);
        if (structure.isEmpty() || weekdays.isEmpty() || weekends.isEmpty()) {
            return Optional.empty();
        }
        Set<Integer> used = new TreeSet<>();
        months.forEach(month -> used.addAll(weekdays.get().get(Months.row(month))));
        months.forEach(month -> used.addAll(weekends.get().get(Months.row(month))));
        used.forEach(period -> requireKilowattHours(structure.get().get(period), fields.remarks()));
        Optional<PeriodPrices> prices = PeriodPrices.of(structure.get(), STRUCTURE, used, fields);
        if (prices.isEmpty() || fields.remarks().errors() > before) {
            return Optional.empty();
        }
        EnergyPrices read = new EnergyPrices(prices.get(), weekdays.get(), weekends.get(), fuel.orElse(NO_FUEL));
        months.forEach(month -> read.requireNotNegative(month, fields));
        return fields.remarks().errors() > before ? Optional.empty() : Optional.of(read);
    }

    /** Prices of the days of a month. */
    Day of(Month month) {
        return new Day(hours(weekdays, month), hours(weekends, month));
    }

    private List<BigDecimal> hours(List<List<Integer>> schedule, Month month) {
        List<BigDecimal> hours = new ArrayList<>();
        for (int period : schedule.get(Months.row(month))) {
            hours.add(price(period, month));
        }
        return hours;
    }

    private BigDecimal price(int period, Month month) {
        return Amounts.plain(periods.of(period).add(fuel.get(Months.row(month))));
    }

    private void requireNotNegative(Month month, RateFields fields) {
        Set<Integer> used = new TreeSet<>(weekdays.get(Months.row(month)));
        used.addAll(weekends.get(Months.row(month)));
        for (int period : used) {
            if (price(period, month).signum() < 0) {
                fields.remarks()
                        .error(
                                STRUCTURE + "[" + period + "]",
                                fields.line(STRUCTURE),
                                "rate, adj and fuel adjustment come to less than nothing in "
                                        + Months.text(Set.of(month)) + ": "
                                        + price(period, month).toPlainString(),
                                "a price of a scenario is 0 or more");
            }
        }
    }

    private static void requireThere(RateFields fields) {
        for (String field : List.of(STRUCTURE, WEEKDAYS, WEEKENDS)) {
            if (fields.find(field).isEmpty()) {
                fields.remarks()
                        .error(
                                field,
                                fields.line(field),
                                "the record does not have it",
                                "ask the database for all details, as JSON that is not flattened");
            }
        }
    }

    /** The unit belongs to the limit of a tier, but says what is metered as well. */
    private static void requireKilowattHours(List<Tier> tiers, Remarks remarks) {
        for (Tier tier : tiers) {
            if (tier.unit().isPresent() && !tier.unit().get().startsWith("kWh")) {
                remarks.error(
                        tier.value(),
                        tier.place() + ".unit",
                        "the price is per " + tier.unit().get(),
                        "a tariff of a scenario has prices per kWh");
            }
        }
    }
}
