package depot.optimizer.replay;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.Violation.Kind;
import java.util.Set;
import java.util.TreeSet;

/** Power banks give no more over a day than they hold, and are full again by the end of the cycle. */
final class BankRules {
    private BankRules() {}

    static void check(DepotTables tables, DepotPlan plan, DayCase day, Violations violations) {
        Set<String> crews = new TreeSet<>();
        day.trips().forEach(trip -> crews.add(trip.crew().id()));
        for (String crew : crews) {
            double given = BankRecharge.givenWh(tables, day, crew);
            double held = BankRecharge.capacityWh(tables, plan, crew);
            if (given > held + Tolerance.ENERGY_WH) {
                violations.add(
                        Kind.BANK_ENERGY,
                        crew,
                        given,
                        held,
                        "power banks of crew " + crew + " should give " + Violations.number(given)
                                + " Wh in a day, but can give " + Violations.number(held));
            }
            if (given > 0) {
                recharged(tables, plan, day, crew, violations);
            }
        }
    }

    private static void recharged(DepotTables tables, DepotPlan plan, DayCase day, String crew, Violations violations) {
        int back = BankRecharge.lastReturn(tables, day, crew);
        for (CrewKit kit : plan.kits()) {
            if (kit.crew().equals(crew) && tables.bankTypes().containsKey(kit.item())) {
                int full = back + tables.bankTypes().get(kit.item()).rechargeMinutes();
                if (full > tables.endMinute()) {
                    violations.add(
                            Kind.BANK_RECHARGE,
                            crew,
                            back,
                            full,
                            tables.endMinute(),
                            "a " + kit.item() + " of crew " + crew + " is full at " + Violations.clock(full)
                                    + ", after the next day's start");
                }
            }
        }
    }
}
