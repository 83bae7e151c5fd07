package depot.optimizer.replay;

import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.plan.TripPlan.RoadCharge;

/** What a running day tells about itself. */
interface DayEvents {
    /** A load does not find all of its packs when it should. */
    void packsNotThere(LoadRun load, int missing, int minute);

    /** Every pack of a load has reached its level, or the day is over without that. */
    void loadEnded(LoadRun load);

    /** A load is not ready when it should be collected. */
    void loadLate(LoadRun load, int minute);

    /** A trip leaves without packs that it should carry. */
    void packsNotCarried(DayCase.Trip trip, Carried planned, int missing, int minute);

    /** After the work of a stop: what is left on board of a family, and what that stop lacked. */
    void worked(DayCase.Trip trip, Needs need, int stop, double leftWh, double lackedWh);

    /** A road charge finds fewer empty packs than planned. */
    void roadPacksNotEmpty(DayCase.Trip trip, RoadCharge charge, int empty);

    /** Watts drawn by circuit in a minute of the cycle. */
    void drawn(int index, double[] wattsByCircuit);

    /** Full packs in the depot may have changed. */
    void shelved(int index, PackRoom room);

    /** Packs that are not full when the cycle ends. */
    void notFull(PackShelf shelf, int missing);
}
