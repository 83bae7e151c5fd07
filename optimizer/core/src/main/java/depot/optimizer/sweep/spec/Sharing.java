package depot.optimizer.sweep.spec;

import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;

/** Whether the depots of a scenario have to be planned together. */
public final class Sharing {
    private Sharing() {}

    /** Whether there are several phases, or limits that the depots share. */
    public static boolean joined(Scenario scenario) {
        return !scenario.coupling().singlePhase() || !SharedLimits.of(scenario).isEmpty();
    }
}
