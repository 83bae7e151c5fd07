package depot.optimizer.fleet;

import depot.optimizer.plan.ExplainedShortage;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.ReplayReport;
import java.util.List;

/** A plan for all depots, its replay, and why it falls short where it does. */
public record FleetResult(Plan plan, ReplayReport replay, List<ExplainedShortage> shortages) {}
