package depot.optimizer.solve;

import depot.optimizer.mip.Outcome;

/** A master and the point that was found for it. */
record MasterPoint(MasterProblem master, Outcome outcome) {}
