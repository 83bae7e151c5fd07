package depot.optimizer.report.page;

import java.util.List;

/** What the page of one depot shows. Tables without rows are left out with a word on why. */
public record DepotPage(
        String title,
        String subtitle,
        List<Cell> neighbours,
        List<Cell> sheets,
        List<Fact> facts,
        TableView purchases,
        TableView placement,
        TableView circuits,
        ReplayPart replay,
        List<DayView> days,
        TableView pools,
        TableView carried,
        TableView kits,
        TableView shortages,
        TableView costsByKind,
        TableView costLines,
        List<String> cautions,
        String carriage,
        TableView heavyPacks,
        TableView solve) {

    /**
     * What the replay found.
     *
     * @param loadCharts the busiest day's load on each circuit and the supply, against its limit
     * @param packCharts full packs in the depot over the day
     * @param peaks highest load against its limit, by circuit
     * @param margins time and energy to spare, by trip and load
     * @param violations rules broken, without rows when there are none
     */
    public record ReplayPart(
            String summary,
            List<LineChart> loadCharts,
            List<LineChart> packCharts,
            TableView peaks,
            TableView margins,
            TableView violations) {}
}
