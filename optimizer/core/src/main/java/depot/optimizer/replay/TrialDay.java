package depot.optimizer.replay;

import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.plan.TripPlan.RoadCharge;

/** Keeps of a drawn day only whether it was met: late loads and packs left behind count by what follows from them. */
final class TrialDay implements DayEvents {
    private boolean met = true;

    boolean met() {
        return met;
    }

    @Override
    public void worked(DayCase.Trip trip, Needs need, int stop, double leftWh, double lackedWh) {
        met &= lackedWh <= Tolerance.ENERGY_WH;
    }

    @Override
    public void notFull(PackShelf shelf, int missing) {
        met = false;
    }

    @Override
    public void packsNotThere(LoadRun load, int missing, int minute) {}

    @Override
    public void loadEnded(LoadRun load) {}

    @Override
    public void loadLate(LoadRun load, int minute) {}

    @Override
    public void packsNotCarried(DayCase.Trip trip, Carried planned, int missing, int minute) {}

    @Override
    public void roadPacksNotEmpty(DayCase.Trip trip, RoadCharge charge, int empty) {}

    @Override
    public void drawn(int index, double[] wattsByCircuit) {}

    @Override
    public void shelved(int index, PackRoom room) {}
}
