package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.math.BigDecimal;

/** A scenario reduced to what the plan of one depot depends on. */
public final class OneDepot {
    private OneDepot() {}

    /** The scenario with one depot, to be planned by one thread, and without the cost of petrol, which no plan depends on. */
    public static Scenario of(Scenario scenario, String depot) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        PriceChanges.petrol(copy, BigDecimal.ZERO);
        SolveSettings solve = scenario.solve();
        copy.solve = new SolveSettings(
                solve.relativeGap(),
                solve.nodeLimit(),
                solve.timeLimitSeconds(),
                1,
                solve.seed(),
                solve.handoverMinutes());
        copy.depots = scenario.depots().stream()
                .filter(each -> each.id().equals(depot))
                .toList();
        return copy.scenario();
    }
}
