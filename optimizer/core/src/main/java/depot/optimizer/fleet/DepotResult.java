package depot.optimizer.fleet;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.DepotReplay;

/** A depot's plan and its replay. */
public record DepotResult(DepotPlan plan, DepotReplay replay) {}
