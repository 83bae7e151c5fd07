package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;

/** A scenario reduced to what the plan of one depot depends on. */
public final class OneDepot {
    private OneDepot() {}

    /** The scenario with one depot, to be planned by one thread, and without what no plan depends on ({@link PlanBasis}). */
    public static Scenario of(Scenario scenario, String depot) {
        ScenarioCopy copy = new ScenarioCopy(PlanBasis.of(scenario));
        SolveSettings solve = scenario.solve();
        copy.solve = new SolveSettings(
                solve.relativeGap(),
                solve.nodeLimit(),
                solve.timeLimitSeconds(),
                1,
                solve.seed(),
                solve.handoverMinutes());
        copy.depots =
                copy.depots.stream().filter(each -> each.id().equals(depot)).toList();
        return copy.scenario();
    }
}
