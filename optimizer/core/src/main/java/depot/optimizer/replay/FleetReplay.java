package depot.optimizer.replay;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
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

    /** Runs the days of a depot's plan and proves nothing of its equipment and its cost. Empty when the scenario does not have the depot. */
    public static List<DayReplay> runDays(Scenario scenario, DepotPlan plan) {
        return DepotTables.of(scenario, plan).map(tables -> days(tables, plan)).orElse(List.of());
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
        List<DayReplay> days = days(tables.get(), plan);
        return new DepotReplay(
                plan.depot(),
                plan.phase(),
                days,
                violations.list(),
                CostReplay.check(tables.get(), plan, earlier, days));
    }

    private static List<DayReplay> days(DepotTables tables, DepotPlan plan) {
        DayCases cases = new DayCases(tables);
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
