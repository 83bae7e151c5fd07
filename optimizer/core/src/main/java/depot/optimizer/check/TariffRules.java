package depot.optimizer.check;

import static java.util.stream.Collectors.groupingBy;

import depot.optimizer.check.SpanSweep.Span;
import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.DepotTables.Depots;
import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.RouteTables.Seasons;
import depot.optimizer.dictionary.TariffTables.Tariffs;
import depot.optimizer.dictionary.TimeSyntax;
import depot.optimizer.scenario.PriceBand;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Rules of tariffs: each minute of each day of the week has one price. */
final class TariffRules {
    private TariffRules() {}

    /** A price band ends after it begins. */
    static void spans(Drafts drafts, Findings findings) {
        drafts.priceBands.forEach(band -> SpanSweep.checkOrder(band.row(), Tariffs.FROM, Tariffs.TO, findings));
    }

    /** The bands of a tariff cover every day of every season from 00:00 to 24:00, and do not overlap. */
    static void cover(Drafts drafts, Findings findings) {
        if (!drafts.table(Tariffs.TABLE).complete() || !drafts.whole(Seasons.TABLE)) {
            return;
        }
        Set<String> broken = new HashSet<>(drafts.inBrokenRows(Tariffs.TABLE, Tariffs.TARIFF));
        drafts.priceBands.stream()
                .map(Located::value)
                .filter(band -> band.toMinute() <= band.fromMinute())
                .forEach(band -> broken.add(band.tariff()));
        List<String> seasons =
                drafts.seasons.stream().map(season -> season.value().id()).toList();
        drafts.priceBands.stream()
                .filter(band -> !broken.contains(band.value().tariff()))
                .collect(groupingBy(band -> band.value().tariff()))
                .values()
                .forEach(bands -> new Cover(bands).check(seasons).report(findings));
    }

    /** A tariff that no depot has may be a slip. */
    static void used(Drafts drafts, Findings findings) {
        if (!drafts.table(Depots.TABLE).complete()) {
            return;
        }
        Set<String> used = new HashSet<>();
        drafts.table(Depots.TABLE).rows().forEach(row -> row.find(Depots.TARIFF).ifPresent(used::add));
        Set<String> told = new HashSet<>();
        for (Located<PriceBand> band : drafts.priceBands) {
            if (!used.contains(band.value().tariff()) && told.add(band.value().tariff())) {
                findings.notice(band, Tariffs.TARIFF, "no depot has this tariff", "it is not used");
            }
        }
    }

    /** Faults of one tariff, gathered so that each is told once for all its days and seasons. */
    private static final class Cover {
        private final List<Located<PriceBand>> bands;
        private final Map<Fault, Map<String, Set<DayOfWeek>>> faults = new LinkedHashMap<>();

        private record Fault(TypedRow row, Field<?> field, String message, String hint) {}

        Cover(List<Located<PriceBand>> bands) {
            this.bands = bands;
        }

        Cover check(List<String> seasons) {
            for (String season : seasons) {
                for (DayOfWeek day : DayOfWeek.values()) {
                    check(season, day);
                }
            }
            return this;
        }

        private void check(String season, DayOfWeek day) {
            List<Span> spans = bands.stream()
                    .filter(band -> band.value().days().contains(day))
                    .filter(band -> band.value().season().map(season::equals).orElse(true))
                    .map(band -> new Span(
                            band.row(), band.value().fromMinute(), band.value().toMinute()))
                    .toList();
            if (spans.isEmpty()) {
                TypedRow first = bands.get(0).row();
                add(new Fault(first, Tariffs.DAYS, "the tariff has no price", "add a band for it"), season, day);
            }
            SpanSweep.sweep(spans, new SpanSweep.Faults() {
                @Override
                public void overlap(Span earlier, Span later) {
                    String message = "the band overlaps the band of line "
                            + earlier.row().line() + " (" + earlier.words() + ")";
                    add(new Fault(later.row(), Tariffs.FROM, message, "shorten one of the two"), season, day);
                }

                @Override
                public void gap(int from, int to, Span besides) {
                    Field<?> field = besides.to() == from ? Tariffs.TO : Tariffs.FROM;
                    String message =
                            "the tariff has no price from " + TimeSyntax.text(from) + " to " + TimeSyntax.text(to);
                    add(new Fault(besides.row(), field, message, "add a band, or lengthen this one"), season, day);
                }
            });
        }

        private void add(Fault fault, String season, DayOfWeek day) {
            faults.computeIfAbsent(fault, none -> new LinkedHashMap<>())
                    .computeIfAbsent(season, none -> EnumSet.noneOf(DayOfWeek.class))
                    .add(day);
        }

        void report(Findings findings) {
            faults.forEach((fault, daysBySeason) -> {
                Map<Set<DayOfWeek>, Set<String>> seasonsByDays = new LinkedHashMap<>();
                daysBySeason.forEach((season, days) -> seasonsByDays
                        .computeIfAbsent(days, none -> new TreeSet<>())
                        .add(season));
                seasonsByDays.forEach((days, seasons) -> findings.error(
                        fault.row,
                        fault.field,
                        fault.message + " on " + DaysSyntax.text(days) + " (season " + String.join(", ", seasons) + ")",
                        fault.hint));
            });
        }
    }
}
