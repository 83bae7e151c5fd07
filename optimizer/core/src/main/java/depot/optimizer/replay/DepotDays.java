package depot.optimizer.replay;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Runs the days of plans of one depot and phase, and proves nothing of their equipment and cost. What all plans with the same crews have in common is
 * worked out once: its tables, base loads, and which season days run alike. Not for several threads at once.
 */
public final class DepotDays {
    private final DepotTables tables;
    private final DayCases cases;

    DepotDays(DepotTables tables) {
        this.tables = tables;
        this.cases = new DayCases(tables);
    }

    /** For a plan and others of its depot, phase and crews; empty when the scenario does not have the depot. */
    public static Optional<DepotDays> of(Scenario scenario, DepotPlan plan) {
        return DepotTables.of(scenario, plan).map(DepotDays::new);
    }

    /** Runs the days of a plan, a run for each group of season days that run alike. */
    public List<DayReplay> run(DepotPlan plan) {
        DayReplayer replayer = new DayReplayer(new Yard(tables, plan));
        List<DayReplay> days = new ArrayList<>();
        for (int index = 0; index < plan.days().size(); index++) {
            DayPlan day = plan.days().get(index);
            for (DayCase dayCase : cases.of(index, day)) {
                Violations violations = Violations.ofDay(plan.depot(), index, Optional.of(dayCase.first()));
                DayRules.check(tables, plan, dayCase, violations);
                days.add(replayer.replay(dayCase, violations));
            }
        }
        return List.copyOf(days);
    }
}
