package depot.optimizer.report.page;

import depot.optimizer.report.text.Figures;
import java.util.List;

/**
 * A kind of day as it is shown.
 *
 * @param id unique on its page
 * @param title number and days
 * @param daysPerYear how often it is run
 * @param open shown unfolded
 * @param handovers what is done when
 * @param trips packs carried
 * @param roadCharges packs charged on the way, may be without rows
 * @param feeds what load-sharing units may draw, may be without rows
 */
public record DayView(
        String id,
        String title,
        String daysPerYear,
        boolean open,
        List<Handover> handovers,
        TableView trips,
        TableView roadCharges,
        TableView feeds) {

    /** How much there is to do: handovers, and steps over all of them. */
    public String work() {
        int steps =
                handovers.stream().mapToInt(handover -> handover.steps().size()).sum();
        return Figures.count(handovers.size(), "handover") + ", " + Figures.count(steps, "step");
    }
}
