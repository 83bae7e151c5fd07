package depot.optimizer.report.page;

import java.util.List;

/**
 * What rerun.html shows.
 *
 * @param inputs what changed in the tables
 * @param depots what becomes of each depot
 * @param equipment what is bought, and what is used more or less than before
 * @param places pieces that change their place
 * @param packs packs of pools and crews
 * @param routine one table for each depot whose routine changes
 * @param fleet what changes in which phase where depots share limits or there are several phases
 * @param there what earlier runs bought, in the same case
 * @param shared whether that is the case
 * @param store pieces that are there and not in use
 */
public record RerunPage(
        String title,
        String subtitle,
        List<Fact> facts,
        TableView inputs,
        TableView depots,
        TableView equipment,
        TableView places,
        TableView packs,
        List<TableView> routine,
        TableView fleet,
        TableView there,
        boolean shared,
        TableView store) {}
