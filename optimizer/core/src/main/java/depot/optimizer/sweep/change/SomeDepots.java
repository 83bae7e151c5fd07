package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Scenario;
import java.util.Set;

/** A scenario reduced to some of its depots. */
public final class SomeDepots {
    private SomeDepots() {}

    /** The scenario with these depots only, in its own order; nothing else is left out. */
    public static Scenario of(Scenario scenario, Set<String> depots) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        copy.depots = scenario.depots().stream()
                .filter(depot -> depots.contains(depot.id()))
                .toList();
        return copy.scenario();
    }
}
