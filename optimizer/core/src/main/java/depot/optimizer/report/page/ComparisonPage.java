package depot.optimizer.report.page;

import java.util.List;

/**
 * What compare.html shows.
 *
 * @param warnings what makes the runs hard to compare
 * @param sections in order
 * @param chart costs added up, one line per run
 */
public record ComparisonPage(
        String title, String subtitle, List<String> warnings, List<Section> sections, LineChart chart) {

    /**
     * A part of the page.
     *
     * @param id unique on the page
     * @param note under the heading, may be empty
     */
    public record Section(String id, String title, String note, TableView table) {}
}
