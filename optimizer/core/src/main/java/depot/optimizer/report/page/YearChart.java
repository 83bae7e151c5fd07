package depot.optimizer.report.page;

import depot.optimizer.report.page.LineChart.Line;
import depot.optimizer.report.page.LineChart.Tick;
import depot.optimizer.report.page.StepLine.Style;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** Draws straight lines over years, from now to the end of the last one. */
public final class YearChart {

    /** Marks on the axis of years, at most. */
    private static final int MOST_YEAR_MARKS = 12;

    private final List<YearLine> lines;
    private final int years;
    private final double step;
    private final double low;
    private final double high;
    private final Scale scale;

    /** What the marks of values count in, so that they stay short. */
    private enum Scale {
        ONES(1, ""),
        THOUSANDS(1e3, "thousand "),
        MILLIONS(1e6, "million ");

        private final double size;
        private final String words;

        Scale(double size, String words) {
            this.size = size;
            this.words = words;
        }

        /** Marks have at most five digits. */
        static Scale of(double largest) {
            return largest < 1e5 ? ONES : largest < 1e8 ? THOUSANDS : MILLIONS;
        }
    }

    /**
     * A line of values.
     *
     * @param name for the legend
     * @param values now and at the end of each year
     */
    public record YearLine(String name, Style style, List<Double> values) {}

    private YearChart(List<YearLine> lines) {
        this.lines = lines;
        this.years = lines.get(0).values().size() - 1;
        double highest = extreme(1);
        double lowest = -extreme(-1);
        this.step = LineChartDrawing.roundStep(highest - lowest);
        this.low = step * Math.floor(lowest / step);
        this.high = Math.max(low + step, step * Math.ceil(highest / step));
        this.scale = Scale.of(Math.max(high, -low));
    }

    private double extreme(int sign) {
        return lines.stream()
                .flatMap(line -> line.values().stream())
                .mapToDouble(value -> sign * value)
                .reduce(0, Math::max);
    }

    /**
     * A chart of lines over the same years.
     *
     * @param measure what the lines are, such as "Costs so far"
     * @param unit of the values; large ones are marked in thousands or millions of it
     */
    public static LineChart of(
            String id, String title, String description, String measure, String unit, List<YearLine> lines) {
        YearChart chart = new YearChart(lines);
        return new LineChart(
                id,
                title,
                description,
                "%s (%s%s)".formatted(measure, chart.scale.words, unit),
                chart.yearTicks(),
                chart.valueTicks(),
                chart.paths(),
                chart.numbers(id + "-numbers", "%s: %s (%s)".formatted(title, measure, unit)));
    }

    private List<Tick> yearTicks() {
        int every = Math.max(1, (years + MOST_YEAR_MARKS - 1) / MOST_YEAR_MARKS);
        List<Tick> ticks = new ArrayList<>();
        for (int year = 0; year <= years; year += every) {
            ticks.add(new Tick(x(year), year == 0 ? "now" : Integer.toString(year)));
        }
        return ticks;
    }

    private List<Tick> valueTicks() {
        List<Tick> ticks = new ArrayList<>();
        for (int mark = 0; low + mark * step <= high + step / 2; mark++) {
            double value = low + mark * step;
            ticks.add(new Tick(y(value), Figures.plain(value / scale.size, 4)));
        }
        return ticks;
    }

    private List<Line> paths() {
        List<Line> paths = new ArrayList<>();
        for (YearLine line : lines) {
            double legend = LineChart.BOTTOM + 52 + 20.0 * paths.size();
            paths.add(new Line(line.name(), line.style().css(), path(line), legend));
        }
        return paths;
    }

    private String path(YearLine line) {
        StringBuilder path = new StringBuilder();
        for (int year = 0; year <= years; year++) {
            path.append(year == 0 ? "M" : "L")
                    .append(Figures.plain(x(year), 1))
                    .append(' ')
                    .append(Figures.plain(y(line.values().get(year)), 1));
        }
        return path.toString();
    }

    private TableView numbers(String id, String caption) {
        TableView.Builder table = TableView.of(id, caption).words("Year");
        lines.forEach(line -> table.numbers(line.name()));
        for (int year = 0; year <= years; year++) {
            List<Cell> cells = new ArrayList<>(List.of(Cell.text(year == 0 ? "now" : Integer.toString(year))));
            for (YearLine line : lines) {
                cells.add(Cell.text(Figures.read(line.values().get(year), 0)));
            }
            table.row(cells);
        }
        return table.build();
    }

    private double x(int year) {
        return rounded(LineChart.LEFT + (LineChart.RIGHT - LineChart.LEFT) * year / (double) years);
    }

    private double y(double value) {
        return rounded(LineChart.BOTTOM - (LineChart.BOTTOM - LineChart.TOP) * (value - low) / (high - low));
    }

    private static double rounded(double place) {
        return Math.round(10 * place) / 10.0;
    }
}
