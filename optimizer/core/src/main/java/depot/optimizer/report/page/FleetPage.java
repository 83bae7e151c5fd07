package depot.optimizer.report.page;

import java.util.List;

/**
 * What report.html shows. Tables without rows are left out with a word on why.
 *
 * @param glance what there is and what is bought at each depot
 * @param sheets links to the sheets to print
 * @param rollout phases and what the bound is made of, none: there is one phase and nothing is shared
 * @param trials days drawn at random, none: they were not asked for
 */
public record FleetPage(
        String title,
        String subtitle,
        List<Fact> facts,
        TableView glance,
        TableView sheets,
        List<TableView> rollout,
        List<TableView> trials,
        TableView depots,
        TableView costs,
        CashFlowView cashFlow,
        TableView purchases,
        TableView tightest,
        TableView shortages,
        List<String> cautions,
        String carriage,
        TableView provenance,
        TableView inputs) {}
