package depot.optimizer.report.page;

import java.util.List;

/** What the fleet's page shows of the yearly flows of money. */
public record CashFlowView(List<Fact> facts, List<String> notes, LineChart chart, TableView yearly) {}
