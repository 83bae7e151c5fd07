package depot.optimizer.replay;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.scenario.PriceBand;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Price of energy over one cycle: spans of one price, in order, without gaps between those that have a price. */
record PriceLine(List<Span> spans) {

    /** From a minute up to another, both after midnight of the day that the cycle starts on. */
    record Span(int fromMinute, int toMinute, BigDecimal pricePerKwh) {}

    static PriceLine of(DepotTables tables, SeasonDay day) {
        int start = tables.startMinute();
        List<PriceBand> bands = tables.scenario().priceBands().stream()
                .filter(band -> band.tariff().equals(tables.depot().tariff()))
                .toList();
        List<Span> spans = new ArrayList<>();
        BigDecimal price = null;
        int from = start;
        for (int t = start; t <= start + BaseLoads.DAY; t++) {
            BigDecimal now = t < start + BaseLoads.DAY ? price(bands, day, t).orElse(null) : null;
            boolean same = now == null ? price == null : price != null && now.compareTo(price) == 0;
            if (!same) {
                if (price != null) {
                    spans.add(new Span(from, t, price));
                }
                price = now;
                from = t;
            }
        }
        return new PriceLine(List.copyOf(spans));
    }

    Optional<BigDecimal> at(int minute) {
        return spans.stream()
                .filter(span -> span.fromMinute() <= minute && minute < span.toMinute())
                .map(Span::pricePerKwh)
                .findFirst();
    }

    /** Spans in which nothing is gained by waiting, in order: no later power of the cycle is cheaper. */
    List<Span> cheapestOfWhatIsLeft() {
        List<Span> cheapest = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            Span span = spans.get(i);
            boolean least = spans.subList(i, spans.size()).stream()
                    .allMatch(later -> later.pricePerKwh().compareTo(span.pricePerKwh()) >= 0);
            if (least) {
                cheapest.add(span);
            }
        }
        return cheapest;
    }

    /** A band of the season goes before one of every season. */
    private static Optional<BigDecimal> price(List<PriceBand> bands, SeasonDay day, int minute) {
        DayOfWeek weekday = minute < BaseLoads.DAY ? day.day() : day.day().plus(1);
        int clock = minute % BaseLoads.DAY;
        Optional<BigDecimal> general = Optional.empty();
        for (PriceBand band : bands) {
            boolean covers = band.days().contains(weekday) && band.fromMinute() <= clock && clock < band.toMinute();
            if (covers && band.season().isEmpty()) {
                general = Optional.of(band.pricePerKwh());
            } else if (covers && band.season().get().equals(day.season())) {
                return Optional.of(band.pricePerKwh());
            }
        }
        return general;
    }
}
