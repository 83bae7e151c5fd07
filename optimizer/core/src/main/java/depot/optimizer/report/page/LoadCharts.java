package depot.optimizer.report.page;

import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DayReplay.CircuitLoad;
import depot.optimizer.replay.DayReplay.FullPacks;
import depot.optimizer.replay.Series;
import depot.optimizer.report.page.StepLine.Hourly;
import depot.optimizer.report.page.StepLine.Style;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The charts of a depot: load of each circuit against its limit, and full packs over the day. */
final class LoadCharts {

    private LoadCharts() {}

    /** One chart per circuit and the supply, each of the day on which it is nearest to its limit. */
    static List<LineChart> loads(List<BusiestDay> busiest) {
        List<LineChart> charts = new ArrayList<>();
        for (BusiestDay day : busiest) {
            day.replay().circuitLoads().stream()
                    .filter(load -> load.circuit().equals(day.peak().circuit()))
                    .findFirst()
                    .ifPresent(load -> charts.add(load("load-" + (charts.size() + 1), day, load)));
        }
        return charts;
    }

    private static LineChart load(String id, BusiestDay day, CircuitLoad load) {
        boolean supply = load.circuit().equals(DayReplay.SUPPLY);
        String what = supply ? "Supply" : "Circuit " + load.circuit();
        String description = "%s on its busiest kind of day (%s): %s A of %s A at %s, share of the limit %s."
                .formatted(
                        what,
                        DayNames.of(day.replay().occurrences()),
                        Figures.read(day.peak().amps(), 1),
                        Figures.read(day.peak().limitAmps(), 1),
                        Clock.time(day.peak().minute()),
                        day.shareWords());
        return LineChartDrawing.of(
                id,
                what + ": load on its busiest day",
                description,
                supply ? "Apparent power (VA)" : "Power for charging (W)",
                List.of(
                        Lines.of("Load", Style.FIRST, Hourly.HIGHEST, load.watts()),
                        Lines.of("Limit", Style.LIMIT, Hourly.LOWEST, load.limitWatts())));
    }

    /** Full packs by type on the day on which fewest are left, all pools together. */
    static List<LineChart> packs(List<DayReplay> days) {
        return days.stream()
                .filter(day -> !day.fullPacks().isEmpty())
                .min(Comparator.comparingDouble(LoadCharts::fewest))
                .map(LoadCharts::packs)
                .stream()
                .toList();
    }

    private static double fewest(DayReplay day) {
        return byType(day).values().stream()
                .mapToDouble(parts ->
                        Lines.sum("", Style.FIRST, Hourly.LOWEST, parts).lowest())
                .sum();
    }

    private static LineChart packs(DayReplay day) {
        List<StepLine> lines = new ArrayList<>();
        StringBuilder fewest = new StringBuilder();
        byType(day).forEach((type, parts) -> {
            StepLine line = Lines.sum(type, Style.of(lines.size()), Hourly.LOWEST, parts);
            lines.add(line);
            fewest.append(fewest.isEmpty() ? "" : ", ")
                    .append(type)
                    .append(' ')
                    .append(Figures.plain(line.lowest(), 0));
        });
        return LineChartDrawing.of(
                "full-packs",
                "Full packs in the depot over the day",
                "The kind of day with the fewest full packs left in the depot (%s). Fewest at any time: %s."
                        .formatted(DayNames.of(day.occurrences()), fewest),
                "Full packs in the depot (packs)",
                lines);
    }

    private static Map<String, List<Series>> byType(DayReplay day) {
        Map<String, List<Series>> byType = new TreeMap<>();
        for (FullPacks packs : day.fullPacks()) {
            byType.computeIfAbsent(packs.packType(), type -> new ArrayList<>()).add(packs.packs());
        }
        return byType;
    }
}
