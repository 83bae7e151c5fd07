package depot.optimizer.fleet;

import depot.optimizer.plan.Certificate;

/** Is told how far a run has come. Called from several threads, one call at a time. */
public interface ProgressListener {

    /** Tells nobody. */
    ProgressListener SILENT = (depot, done, total, certificate) -> {};

    /** The prices of shared limits stand: a lower bound of their relaxation and its cost so far. */
    default void pricesFound(double bound, double cost) {}

    /** A plan for the whole fleet stands. */
    default void fleetPlan(Certificate certificate) {}

    /** The run ends early, since it was asked to; the best plan so far is the fleet's. */
    default void stopped() {}

    /** A depot's plan stands and is replayed. */
    void depotDone(String depot, int done, int total, Certificate certificate);
}
