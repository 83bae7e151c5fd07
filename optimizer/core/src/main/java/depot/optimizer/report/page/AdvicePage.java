package depot.optimizer.report.page;

import java.util.List;

/**
 * What explain.html shows.
 *
 * @param limits what the depots share, without rows where that is nothing
 * @param shared whether depots share limits, or there are several phases
 */
public record AdvicePage(
        String title,
        String subtitle,
        List<Fact> facts,
        TableView limits,
        List<Section> depots,
        boolean shared,
        List<String> thumbRules,
        List<String> cautions,
        TableView provenance,
        TableView inputs) {

    /**
     * One depot. Tables of questions that were not asked are without rows.
     *
     * @param id of its place on the page
     * @param thumb the plan by rules of thumb beside the plan
     * @param broken rules that the former breaks
     * @param differing items of which the two have different numbers
     */
    public record Section(
            String id,
            String title,
            TableView thumb,
            TableView broken,
            TableView differing,
            TableView why,
            TableView worth,
            TableView next) {}
}
