package depot.optimizer.report.page;

import java.util.List;

/** A moment at which somebody moves packs, and what is done then, in order. */
public record Handover(String time, List<Step> steps) {

    /**
     * One thing to do.
     *
     * @param deed what is done, such as "Load"
     * @param at charger or crew
     * @param place circuit and outlet of the charger, empty for crews
     * @param packs which and how many
     * @param note when they are ready, or when the trip is back
     */
    public record Step(String deed, String at, String place, String packs, String note) {}
}
