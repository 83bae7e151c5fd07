package depot.optimizer.fleet;

import depot.optimizer.solve.NoPlanException;

/** A run was asked to end before it had the plan that it was working on. */
final class StoppedException extends NoPlanException {

    private static final long serialVersionUID = 1;

    StoppedException() {
        super("stopped before the fleet had a plan");
    }
}
