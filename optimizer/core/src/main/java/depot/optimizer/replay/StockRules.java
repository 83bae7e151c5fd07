package depot.optimizer.replay;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackSharing;
import java.util.Map;
import java.util.TreeMap;

/** Packs and kits: they exist, belong to somebody, may be carried, and no more of them count as owned than are owned. */
final class StockRules {
    private final DepotTables tables;
    private final DepotPlan plan;
    private final EarlierPhases earlier;
    private final Violations violations;

    private StockRules(DepotTables tables, DepotPlan plan, EarlierPhases earlier, Violations violations) {
        this.tables = tables;
        this.plan = plan;
        this.earlier = earlier;
        this.violations = violations;
    }

    static void check(DepotTables tables, DepotPlan plan, EarlierPhases earlier, Violations violations) {
        StockRules rules = new StockRules(tables, plan, earlier, violations);
        plan.packs().forEach(rules::packs);
        plan.kits().forEach(rules::kit);
        rules.owned();
        rules.banksAreRecharged();
    }

    private void packs(PackStock stock) {
        if (!tables.packTypes().containsKey(stock.packType())) {
            violations.missing("pack type", stock.packType(), "the stock of " + stock.pool());
        }
        boolean pooled = tables.scenario().packSharing() == PackSharing.DEPOT;
        boolean known =
                pooled ? stock.pool().equals(plan.depot()) : tables.crews().containsKey(stock.pool());
        if (!known) {
            violations.missing(pooled ? "depot pool" : "crew", stock.pool(), "a stock of " + stock.packType());
        }
        ownedWithin(stock.pool() + " " + stock.packType(), stock.owned(), stock.count());
    }

    private void kit(CrewKit kit) {
        if (!tables.crews().containsKey(kit.crew())) {
            violations.missing("crew", kit.crew(), "a kit of " + kit.item());
        }
        ChargerType charger = tables.chargerTypes().get(kit.item());
        if (charger == null && !tables.bankTypes().containsKey(kit.item())) {
            violations.missing("portable charger or power bank", kit.item(), "crew " + kit.crew());
        } else if (charger != null && !charger.portable()) {
            violations.add(
                    Kind.PORTABLE,
                    kit.crew(),
                    "crew " + kit.crew() + " carries " + kit.item() + ", which is not portable");
        }
        ownedWithin(kit.crew() + " " + kit.item(), kit.owned(), kit.count());
    }

    private void ownedWithin(String subject, int owned, int count) {
        if (owned < 0 || owned > count) {
            violations.add(Kind.OWNED, subject, owned, count, owned + " of " + count + " are said to be owned");
        }
    }

    /** Compares what counts as owned with what is owned, was bought in earlier phases or came from other depots, item by item over the depot. */
    private void owned() {
        Map<String, Integer> claimed = new TreeMap<>();
        plan.packs().forEach(s -> claimed.merge(s.packType(), s.owned(), Integer::sum));
        plan.kits().forEach(k -> claimed.merge(k.item(), k.owned(), Integer::sum));
        plan.chargers().stream()
                .filter(ChargerPlacement::owned)
                .forEach(c -> claimed.merge(c.chargerType(), 1, Integer::sum));
        plan.units().stream().filter(UnitPlacement::owned).forEach(u -> claimed.merge(u.unitType(), 1, Integer::sum));
        claimed.forEach((item, count) -> {
            int listed = tables.scenario().owned().stream()
                            .filter(o ->
                                    o.depot().equals(plan.depot()) && o.item().equals(item))
                            .mapToInt(Owned::count)
                            .sum()
                    + earlier.bought(item)
                    + earlier.moved(plan, item);
            if (count > listed) {
                violations.add(
                        Kind.OWNED,
                        item,
                        count,
                        listed,
                        count + " " + item + " count as owned, but " + listed + " are");
            }
        });
    }

    private void banksAreRecharged() {
        for (CrewKit kit : plan.kits()) {
            int placed = (int) plan.banks().stream()
                    .filter(b -> b.crew().equals(kit.crew()) && b.bankType().equals(kit.item()))
                    .map(BankPlacement::outlet)
                    .count();
            if (tables.bankTypes().containsKey(kit.item()) && placed < kit.count()) {
                violations.add(
                        Kind.BANK_RECHARGE,
                        kit.crew(),
                        placed,
                        kit.count(),
                        "crew " + kit.crew() + " carries " + kit.count() + " " + kit.item() + ", but only " + placed
                                + " have an outlet at the depot");
            }
        }
    }
}
