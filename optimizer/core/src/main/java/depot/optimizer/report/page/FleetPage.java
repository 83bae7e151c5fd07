package depot.optimizer.report.page;

import java.util.List;

/** What report.html shows. Tables without rows are left out with a word on why. */
public record FleetPage(
        String title,
        String subtitle,
        List<Fact> facts,
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
