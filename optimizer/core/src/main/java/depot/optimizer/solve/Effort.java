package depot.optimizer.solve;

import depot.optimizer.problem.DepotRollout;

/** How much work a depot's search does before it settles for what it has. A search that is asked for more goes on from where it was. */
public enum Effort {
    /** The first plan and its bound: one look at one master. */
    FIRST,
    /** Proofs with some work each, where they may do: most depots need no more, and the few that would take minutes are put off. */
    MORE,
    /** All that the gap asked for takes, within the limits. */
    ALL;

    /** The most that is worth making: to search a master of many days for anything cheaper takes minutes for each depot, and finds little. */
    public static Effort most(DepotRollout rollout) {
        return rollout.manyDays() ? FIRST : ALL;
    }
}
