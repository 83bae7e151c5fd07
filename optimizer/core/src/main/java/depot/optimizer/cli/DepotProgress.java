package depot.optimizer.cli;

import depot.optimizer.plan.Certificate;

/** Hears of every depot that is planned; may be called from several threads. */
@FunctionalInterface
interface DepotProgress {

    /**
     * A depot has its plan.
     *
     * @param done how many depots have theirs
     * @param total how many there are
     */
    void depotDone(String depot, int done, int total, Certificate certificate);
}
