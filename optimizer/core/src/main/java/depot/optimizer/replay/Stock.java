package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import java.util.Map;
import java.util.TreeMap;

/**
 * Pieces of a type.
 *
 * @param owned how many of the count are not bought in the plan's phase
 */
record Stock(int count, int owned) {

    /** Chargers, units and power banks of a plan, by type. */
    static Map<String, Stock> pieces(DepotPlan plan) {
        Map<String, Stock> stocks = new TreeMap<>();
        plan.chargers().forEach(c -> add(stocks, c.chargerType(), new Stock(1, c.owned() ? 1 : 0)));
        plan.units().forEach(u -> add(stocks, u.unitType(), new Stock(1, u.owned() ? 1 : 0)));
        plan.kits().forEach(k -> add(stocks, k.item(), new Stock(k.count(), k.owned())));
        return stocks;
    }

    /** The same with packs. */
    static Map<String, Stock> all(DepotPlan plan) {
        Map<String, Stock> stocks = pieces(plan);
        plan.packs().forEach(p -> add(stocks, p.packType(), new Stock(p.count(), p.owned())));
        return stocks;
    }

    private static void add(Map<String, Stock> stocks, String item, Stock more) {
        stocks.merge(item, more, (a, b) -> new Stock(a.count + b.count, a.owned + b.owned));
    }

    /** Pieces that the plan's phase buys. */
    int bought() {
        return count - owned;
    }
}
