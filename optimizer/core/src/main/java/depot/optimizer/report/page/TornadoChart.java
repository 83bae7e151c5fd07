package depot.optimizer.report.page;

import depot.optimizer.report.page.LineChart.Tick;
import java.util.List;

/**
 * Bars to both sides of the base plan's cost, widest first.
 *
 * @param unit of the axis, with its name
 * @param basePlace where the base plan's cost is drawn
 * @param numbers the same as a table
 */
public record TornadoChart(
        String id,
        String title,
        String description,
        String unit,
        List<Tick> ticks,
        double basePlace,
        List<Bar> bars,
        TableView numbers) {

    /** Width of the drawing. */
    public static final int WIDTH = 720;
    /** Left edge of the plot. */
    public static final int LEFT = 44;
    /** Right edge of the plot. */
    public static final int RIGHT = 676;
    /** Upper edge of the plot. */
    public static final int TOP = 46;
    /** Thickness of one end's bar; the two lie one below the other, so that neither hides the other. */
    public static final int THICK = 9;
    /** Height of one bar with its words. */
    public static final int ROW = 44;

    /**
     * A change.
     *
     * @param words what is changed, and the two values
     * @param top upper edge of its words
     */
    public record Bar(String words, double top, List<Piece> pieces) {}

    /** One end of a change: from the base plan's cost to its own. */
    public record Piece(String css, int down, double left, double width) {}

    /** Lower edge of the plot. */
    public int bottom() {
        return TOP + ROW * bars.size();
    }

    /** Height of the drawing: plot and axis labels. */
    public int height() {
        return bottom() + 34;
    }
}
