package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;

/**
 * Proves a plan: checks its equipment against the scenario, runs every day minute by minute and works its cost out again. A plan that does
 * not fit the scenario (any more) gives violations, never an exception.
 */
public final class FleetReplay {
    private FleetReplay() {}

    /** Proves every depot of a plan. */
    public static ReplayReport run(Scenario scenario, Plan plan) {
        return new ReplayReport(
                plan.depots().parallelStream()
                        .map(depot -> runPhase(scenario, depot, EarlierPhases.of(plan.depots(), depot)))
                        .toList(),
                FleetRules.check(scenario, plan));
    }

    /** Rules that the depots of a plan break together. */
    public static List<Violation> runFleet(Scenario scenario, Plan plan) {
        return FleetRules.check(scenario, plan);
    }

    /** Proves the plan of one depot that is the only one, or the first of several phases. */
    public static DepotReplay runDepot(Scenario scenario, DepotPlan plan) {
        return runPhase(scenario, plan, EarlierPhases.NONE);
    }

    /** Proves the plans of one depot, one for each phase in their order. */
    public static List<DepotReplay> runPhases(Scenario scenario, List<DepotPlan> plans) {
        return plans.stream()
                .map(plan -> runPhase(scenario, plan, EarlierPhases.of(plans, plan)))
                .toList();
    }

    private static DepotReplay runPhase(Scenario scenario, DepotPlan plan, EarlierPhases earlier) {
        Violations violations = Violations.ofDepot(plan.depot());
        Optional<DepotTables> tables = DepotTables.of(scenario, plan);
        if (tables.isEmpty()) {
            violations.missing("depot", plan.depot(), "the plan");
            return new DepotReplay(plan.depot(), plan.phase(), List.of(), violations.list(), CostReplay.unknown(plan));
        }
        EquipmentRules.check(tables.get(), plan, earlier, violations);
        List<DayReplay> days = new DepotDays(tables.get()).run(plan);
        return new DepotReplay(
                plan.depot(),
                plan.phase(),
                days,
                violations.list(),
                CostReplay.check(tables.get(), plan, earlier, days));
    }
}
