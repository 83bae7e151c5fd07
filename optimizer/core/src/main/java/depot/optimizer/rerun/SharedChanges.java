package depot.optimizer.rerun;

import java.util.List;

/**
 * What a rerun does to a fleet whose depots share limits, or that has several phases, beside its changes of single depots.
 *
 * @param standing what was there before this run planned anything, beside what the tables asked for list
 * @param changes in each phase
 * @param fleetCostBefore present cost of what no single depot pays in going on with the earlier plan; below 0 where quantity prices take off
 * @param fleetCostAfter the same in this plan
 * @param kept whether the plan of the earlier run stays as it is
 */
public record SharedChanges(
        Standing standing, List<FleetChange> changes, double fleetCostBefore, double fleetCostAfter, boolean kept) {

    /** Copies the list. */
    public SharedChanges {
        changes = List.copyOf(changes);
    }
}
