package depot.optimizer.report.page;

import depot.optimizer.report.page.LineChart.Line;
import depot.optimizer.report.page.LineChart.Tick;
import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** Draws step lines over one day: finds round marks for the axes and turns values into paths. */
final class LineChartDrawing {

    private static final int HOUR = 60;
    private static final int TIME_STEP = 3 * HOUR;

    private final List<StepLine> lines;
    private final int from;
    private final int to;
    private final double step;
    private final double top;

    private LineChartDrawing(List<StepLine> lines) {
        this.lines = lines;
        this.from = lines.get(0).startMinute();
        this.to = lines.get(0).endMinute();
        double highest = lines.stream().mapToDouble(StepLine::highest).max().orElse(0);
        this.step = roundStep(highest);
        this.top = Math.max(step, step * Math.ceil(highest / step - 1e-9));
    }

    /** A chart of lines that start and end together. */
    static LineChart of(String id, String title, String description, String unit, List<StepLine> lines) {
        LineChartDrawing drawing = new LineChartDrawing(lines);
        return new LineChart(
                id,
                title,
                description,
                unit,
                drawing.timeTicks(),
                drawing.valueTicks(),
                drawing.paths(),
                HourTable.of(id + "-numbers", title + ", by the hour: " + unit, lines));
    }

    /** 1, 2 or 5 times a power of ten, so that four to ten marks fit; no fractions of small counts. */
    static double roundStep(double highest) {
        if (highest <= 0) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(highest / 4)));
        for (double factor : new double[] {1, 2, 5}) {
            if (highest / (factor * power) <= 6) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    private List<Tick> timeTicks() {
        List<Tick> ticks = new ArrayList<>();
        for (int minute = -Math.floorDiv(-from, TIME_STEP) * TIME_STEP; minute <= to; minute += TIME_STEP) {
            ticks.add(new Tick(x(minute), Clock.time(minute)));
        }
        return ticks;
    }

    private List<Tick> valueTicks() {
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i * step <= top + step / 2; i++) {
            ticks.add(new Tick(y(i * step), mark(i * step)));
        }
        return ticks;
    }

    private String mark(double value) {
        return step >= 1 ? Figures.read(value, 0) : Figures.plain(value, 4);
    }

    private List<Line> paths() {
        List<Line> paths = new ArrayList<>();
        for (StepLine line : lines) {
            double legend = LineChart.BOTTOM + 52 + 20.0 * paths.size();
            paths.add(new Line(line.name(), line.style().css(), path(line), legend));
        }
        return paths;
    }

    private String path(StepLine line) {
        StringBuilder path = new StringBuilder();
        for (int minute : line.changes()) {
            String y = Figures.plain(y(line.at(minute)), 1);
            if (path.isEmpty()) {
                path.append("M").append(Figures.plain(x(minute), 1)).append(' ').append(y);
            } else {
                path.append("H").append(Figures.plain(x(minute), 1)).append("V").append(y);
            }
        }
        return path.append("H").append(Figures.plain(x(to), 1)).toString();
    }

    private double x(int minute) {
        return rounded(LineChart.LEFT + (LineChart.RIGHT - LineChart.LEFT) * (minute - from) / (double) (to - from));
    }

    private double y(double value) {
        return rounded(LineChart.BOTTOM - (LineChart.BOTTOM - LineChart.TOP) * value / top);
    }

    private static double rounded(double place) {
        return Math.round(10 * place) / 10.0;
    }
}
