package depot.optimizer.model;

import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;

/** A family of constraints on one kind of day. */
interface DayRule {

    /** Adds the family's rows for a day. */
    void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day);
}
