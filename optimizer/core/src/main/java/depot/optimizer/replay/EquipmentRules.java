package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;

/** Rules that the equipment keeps or breaks whatever the day. */
final class EquipmentRules {
    private EquipmentRules() {}

    static void check(DepotTables tables, DepotPlan plan, EarlierPhases earlier, Violations violations) {
        ReferenceRules.check(tables, plan, violations);
        CircuitRules.check(tables, plan, violations);
        UnitRules.check(tables, plan, violations);
        StockRules.check(tables, plan, earlier, violations);
        PetrolRules.check(tables, earlier, violations);
        PhaseRules.check(plan, earlier, violations);
        CalendarRules.check(tables, plan, violations);
    }
}
