package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;

/** Rules of one day that need no clock: they are read off the plan before it runs. */
final class DayRules {
    private DayRules() {}

    static void check(DepotTables tables, DepotPlan plan, DayCase day, Violations violations) {
        TripRules.check(tables, plan, day, violations);
        RoadRules.check(tables, plan, day, violations);
        LoadRules.check(tables, plan, day, violations);
        BankRules.check(tables, plan, day, violations);
        EnergyRules.check(tables, plan, day, violations);
    }
}
