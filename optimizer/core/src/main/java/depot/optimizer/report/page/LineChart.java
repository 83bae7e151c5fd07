package depot.optimizer.report.page;

import java.util.List;

/**
 * A drawn chart of step lines over a day, and the same numbers as a table.
 *
 * @param id unique on its page; parts of the chart have ids that start with it
 * @param title what it shows
 * @param description what a reader who does not see it should know
 * @param unit of the upright axis, with its name
 * @param lines path and look of each line
 * @param numbers the same numbers by the hour
 */
public record LineChart(
        String id,
        String title,
        String description,
        String unit,
        List<Tick> timeTicks,
        List<Tick> valueTicks,
        List<Line> lines,
        TableView numbers) {

    /** A mark on an axis: place in the drawing, and label. */
    public record Tick(double place, String label) {}

    /** A line in the drawing: its path, its look, and the height of its sample in the legend. */
    public record Line(String name, String css, String path, double legendPlace) {}

    /** Width of the drawing. */
    public static final int WIDTH = 720;

    /** Left edge of the plot. */
    public static final int LEFT = 52;

    /** Right edge of the plot. */
    public static final int RIGHT = 708;

    /** Upper edge of the plot. */
    public static final int TOP = 26;

    /** Lower edge of the plot. */
    public static final int BOTTOM = 236;

    /** Height of the drawing: plot, axis labels, and the legend's lines. */
    public int height() {
        return BOTTOM + 48 + 20 * lines.size();
    }
}
