package depot.optimizer.model;

import depot.optimizer.mip.MipModel;
import depot.optimizer.problem.DepotProblem;

/** A family of constraints on what is bought. */
interface CapacityRule {

    /** Adds the family's rows. */
    void add(MipModel model, DepotProblem problem, CapacityVars capacity);
}
