package depot.optimizer.report.page;

import depot.optimizer.report.page.LineChart.Tick;
import java.util.List;

/**
 * Cost along a change: a line through the plans' costs, and a band down to what is proven that no plan costs less than.
 *
 * @param unit of the upright axis, with its name
 * @param across of the other axis, with its name and unit
 * @param line path through the costs
 * @param band path around cost and bound, empty: nothing is proven
 * @param base height of the base plan's cost
 * @param bandWords what the band is
 * @param crosses places across at which there is no plan
 * @param numbers the same as a table
 */
public record CurveChart(
        String id,
        String title,
        String description,
        String unit,
        String across,
        List<Tick> acrossTicks,
        List<Tick> valueTicks,
        String line,
        String band,
        List<Dot> dots,
        double base,
        String bandWords,
        List<Double> crosses,
        TableView numbers) {

    /** A plan; its look says whether every day is met. */
    public record Dot(double x, double y, String css) {}

    /** Width of the drawing. */
    public static final int WIDTH = 720;
    /** Left edge of the plot. */
    public static final int LEFT = 96;
    /** Right edge of the plot. */
    public static final int RIGHT = 690;
    /** Upper edge of the plot. */
    public static final int TOP = 26;
    /** Lower edge of the plot. */
    public static final int BOTTOM = 266;
    /** Height of the drawing: plot, axis labels, the axis' name and the legend's lines. */
    public static final int HEIGHT = 372;
}
