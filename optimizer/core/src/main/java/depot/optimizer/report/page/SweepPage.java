package depot.optimizer.report.page;

import java.util.List;

/**
 * What sweep.html shows. Parts that the sweep does not ask for are empty.
 *
 * @param tornado none or one
 * @param curves one for each line
 * @param frontiers one for each frontier
 * @param grids one for each grid
 */
public record SweepPage(
        String title,
        String subtitle,
        List<Fact> facts,
        List<TornadoChart> tornado,
        List<CurveChart> curves,
        List<CurveChart> frontiers,
        List<TableView> grids,
        TableView cases,
        TableView losses,
        TableView all,
        TableView provenance,
        TableView inputs) {}
