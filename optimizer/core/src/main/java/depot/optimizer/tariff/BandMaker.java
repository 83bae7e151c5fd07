package depot.optimizer.tariff;

import depot.optimizer.scenario.PriceBand;
import depot.optimizer.tariff.EnergyPrices.Day;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes price bands of hourly prices: as few rows as say the same. */
final class BandMaker {
    private static final Set<DayOfWeek> WEEKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    private static final Set<DayOfWeek> WEEKEND = EnumSet.range(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);
    private static final int HOUR = 60;

    private final String tariff;
    private final BigDecimal perDollar;
    private final List<PriceBand> bands = new ArrayList<>();

    private BandMaker(String tariff, BigDecimal perDollar) {
        this.tariff = tariff;
        this.perDollar = perDollar;
    }

    /**
     * Bands of a tariff, season by season.
     *
     * @param perDollar what a US dollar is worth in the scenario's currency
     * @param seasons keys of the scenario's seasons, for the hint
     * @return empty after telling which months of one season differ
     */
    static Optional<List<PriceBand>> bands(
            String tariff,
            EnergyPrices prices,
            SeasonMonths months,
            List<String> seasons,
            BigDecimal perDollar,
            RateFields fields) {
        Map<Optional<String>, Day> days = new LinkedHashMap<>();
        if (months.bySeason().isEmpty()) {
            String hint = "say which months each season has: --season SEASON=MONTHS for " + String.join(", ", seasons);
            day("the prices differ by month", months.used(), prices, hint, fields)
                    .ifPresent(day -> days.put(Optional.empty(), day));
        }
        months.bySeason().forEach((season, own) -> {
            String message = "the months of season \"" + season + "\" have different prices";
            day(message, own, prices, "give each season months that are alike; the scenario may need one more", fields)
                    .ifPresent(day -> days.put(Optional.of(season), day));
        });
        if (days.size() < Math.max(1, months.bySeason().size())) {
            return Optional.empty();
        }
        BandMaker maker = new BandMaker(tariff, perDollar);
        if (Set.copyOf(days.values()).size() == 1) {
            maker.add(Optional.empty(), days.values().iterator().next());
        } else {
            days.forEach(maker::add);
        }
        return Optional.of(maker.bands);
    }

    private static Optional<Day> day(
            String message, Set<Month> months, EnergyPrices prices, String hint, RateFields fields) {
        Map<Day, Set<Month>> alike = Months.alike(months, prices::of);
        if (alike.size() == 1) {
            return Optional.of(alike.keySet().iterator().next());
        }
        String field = EnergyPrices.WEEKDAYS;
        fields.remarks().error(field, fields.line(field), message + ": " + Months.words(alike), hint);
        return Optional.empty();
    }

    private void add(Optional<String> season, Day day) {
        if (day.weekday().equals(day.weekend())) {
            add(season, EnumSet.allOf(DayOfWeek.class), day.weekday());
        } else {
            add(season, WEEKDAYS, day.weekday());
            add(season, WEEKEND, day.weekend());
        }
    }

    private void add(Optional<String> season, Set<DayOfWeek> days, List<BigDecimal> hours) {
        int from = 0;
        for (int hour = 1; hour <= hours.size(); hour++) {
            if (hour == hours.size() || hours.get(hour).compareTo(hours.get(from)) != 0) {
                BigDecimal price = Amounts.plain(hours.get(from).multiply(perDollar));
                bands.add(new PriceBand(tariff, season, days, from * HOUR, hour * HOUR, price));
                from = hour;
            }
        }
    }
}
