package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;

/** Rules that the equipment keeps or breaks whatever the day. */
final class EquipmentRules {
    private EquipmentRules() {}

    static void check(DepotTables tables, DepotPlan plan, Violations violations) {
        ReferenceRules.check(tables, plan, violations);
        CircuitRules.check(tables, plan, violations);
        UnitRules.check(tables, plan, violations);
        StockRules.check(tables, plan, violations);
        PetrolRules.check(tables, violations);
        CalendarRules.check(tables, plan, violations);
    }
}
