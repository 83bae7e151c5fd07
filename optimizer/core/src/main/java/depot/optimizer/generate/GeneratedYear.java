package depot.optimizer.generate;

import depot.optimizer.scenario.DepreciationShare;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.TariffTerms;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/** The calendar and the tariffs of every synthetic fleet. */
final class GeneratedYear {
    static final int MOST_SEASONS = 4;
    static final String FLAT = "flat";
    static final String BY_TIME = "by-time";
    private static final String FIFTHS = "fifths";

    private static final List<Season> FOUR_SEASONS = List.of(
            new Season("summer", 16, 1),
            new Season("spring", 13, 0.95),
            new Season("autumn", 13, 0.92),
            new Season("winter", 9, 0.75));
    private static final int WORKING_DAYS = 5;
    private static final int DAY = 1440;

    private GeneratedYear() {}

    /** The first seasons of the list; a year of one season has 50 weeks of it. */
    static List<Season> seasons(GeneratorSettings settings) {
        return settings.seasons() == 1
                ? List.of(new Season("year", 50, 0.95))
                : FOUR_SEASONS.subList(0, settings.seasons());
    }

    /** Monday to Friday parted into the asked kinds of days; Saturday is the sixth kind, Sunday the seventh. */
    static List<Set<DayOfWeek>> dayKinds(GeneratorSettings settings) {
        int weekdayKinds = Math.min(settings.days(), WORKING_DAYS);
        List<Set<DayOfWeek>> kinds = new ArrayList<>();
        for (int kind = 0; kind < settings.days(); kind++) {
            kinds.add(EnumSet.noneOf(DayOfWeek.class));
        }
        for (int day = 0; day < WORKING_DAYS; day++) {
            kinds.get(day * weekdayKinds / WORKING_DAYS).add(DayOfWeek.of(day + 1));
        }
        for (int kind = WORKING_DAYS; kind < settings.days(); kind++) {
            kinds.get(kind).add(DayOfWeek.of(kind + 1));
        }
        return kinds;
    }

    /** A flat tariff and one with a cheap night and a dear evening. */
    static List<PriceBand> priceBands() {
        return List.of(
                band(FLAT, 0, DAY, "0.26"),
                band(BY_TIME, 0, 360, "0.12"),
                band(BY_TIME, 360, 960, "0.27"),
                band(BY_TIME, 960, 1260, "0.43"),
                band(BY_TIME, 1260, 1380, "0.27"),
                band(BY_TIME, 1380, DAY, "0.12"));
    }

    static List<TariffTerms> terms() {
        return List.of(
                new TariffTerms(FLAT, new BigDecimal("0.80"), BigDecimal.ZERO, 15),
                new TariffTerms(BY_TIME, new BigDecimal("1.10"), new BigDecimal("6.50"), 30));
    }

    /** Taxes, petrol and carbon, made up; purchases are written off in five equal parts. */
    static FinanceTerms finance() {
        List<DepreciationShare> fifths = IntStream.rangeClosed(1, 5)
                .mapToObj(year -> new DepreciationShare(FIFTHS, year, 0.2))
                .toList();
        return new FinanceTerms(
                0.2,
                Optional.of(FIFTHS),
                Optional.of(new BigDecimal("1.70")),
                0.02,
                FinanceTerms.PETROL_KG_CO2_PER_LITRE,
                OptionalDouble.of(0.3),
                Optional.of(new BigDecimal("60")),
                fifths);
    }

    private static PriceBand band(String tariff, int fromMinute, int toMinute, String price) {
        Set<DayOfWeek> week = EnumSet.allOf(DayOfWeek.class);
        return new PriceBand(tariff, Optional.empty(), week, fromMinute, toMinute, new BigDecimal(price));
    }
}
