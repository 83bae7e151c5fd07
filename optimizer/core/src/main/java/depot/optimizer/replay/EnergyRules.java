package depot.optimizer.replay;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import java.util.HashMap;
import java.util.Map;

/** The energy that the plan reckons with, over the whole day, is what its loads and banks draw. */
final class EnergyRules {
    /** Share by which the two may differ: rounding of the plan's numbers. */
    private static final double SHARE = 1e-3;

    private static final double KWH = 1e-3;

    private EnergyRules() {}

    static void check(DepotTables tables, DepotPlan plan, DayCase day, Violations violations) {
        double drawn = loadsWh(tables, plan, day);
        for (BankRecharge bank : BankRecharge.of(tables, plan, day)) {
            drawn += bank.gridWh();
        }
        double expected = drawn / 1000;
        double planned =
                day.plan().energy().stream().mapToDouble(EnergyUse::kwh).sum();
        if (Math.abs(planned - expected) > KWH + SHARE * expected) {
            violations.add(
                    Kind.GRID_ENERGY,
                    "day " + day.index(),
                    planned,
                    expected,
                    "the plan reckons with " + Violations.number(planned) + " kWh from the grid, but its loads draw "
                            + Violations.number(expected) + " kWh");
        }
    }

    private static double loadsWh(DepotTables tables, DepotPlan plan, DayCase day) {
        Map<String, ChargerType> types = new HashMap<>();
        for (ChargerPlacement charger : plan.chargers()) {
            ChargerType type = tables.chargerTypes().get(charger.chargerType());
            if (type != null) {
                types.put(charger.id(), type);
            }
        }
        double wattHours = 0;
        for (ChargerLoad load : day.plan().loads()) {
            ChargerType charger = types.get(load.charger());
            for (Loaded item : load.packs()) {
                PackType pack = tables.packTypes().get(item.packType());
                if (charger != null && pack != null) {
                    double share = item.level() == Level.FULL ? 1 : ChargeCurve.KNEE;
                    wattHours += item.count() * share * pack.capacityWh() * pack.usableShare() / charger.efficiency();
                }
            }
        }
        return wattHours;
    }
}
