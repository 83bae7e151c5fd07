package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;

/** What a plan buys in each phase, and the capital that it takes: prices and mounting, not what follows them. */
final class PhaseSpending {

    private final Scenario scenario;
    private final Plan plan;
    private final Map<String, BigDecimal> prices = new HashMap<>();

    PhaseSpending(Scenario scenario, Plan plan) {
        this.scenario = scenario;
        this.plan = plan;
        scenario.packTypes().forEach(type -> prices.put(type.id(), type.price()));
        scenario.chargerTypes()
                .forEach(type -> prices.put(type.id(), type.price().add(type.installCost())));
        scenario.sharingUnitTypes()
                .forEach(type -> prices.put(type.id(), type.price().add(type.installCost())));
        scenario.powerBankTypes().forEach(type -> prices.put(type.id(), type.price()));
    }

    /** Capital of some depots in a phase. */
    BigDecimal capital(String phase, Predicate<DepotPlan> which) {
        BigDecimal sum = BigDecimal.ZERO;
        for (DepotPlan depot : plan.depots()) {
            if (depot.phase().equals(phase) && which.test(depot)) {
                sum = sum.add(capital(depot));
            }
        }
        return sum;
    }

    private BigDecimal capital(DepotPlan depot) {
        EarlierPhases earlier = EarlierPhases.of(plan.depots(), depot);
        BigDecimal sum = BigDecimal.ZERO;
        for (Map.Entry<String, Stock> stock : Stock.all(depot).entrySet()) {
            BigDecimal price = prices.getOrDefault(stock.getKey(), BigDecimal.ZERO);
            sum = sum.add(price.multiply(BigDecimal.valueOf(stock.getValue().bought())));
        }
        for (Circuit circuit : scenario.circuits()) {
            boolean built = circuit.depot().equals(depot.depot())
                    && depot.circuitsBuilt().contains(circuit.id())
                    && !earlier.built(circuit.id());
            sum = built ? sum.add(circuit.installCost()) : sum;
        }
        for (Depot site : scenario.depots()) {
            boolean upgraded = site.id().equals(depot.depot()) && depot.supplyUpgraded() && !earlier.upgraded();
            sum = upgraded ? sum.add(site.supplyUpgradeCost()) : sum;
        }
        return sum;
    }

    /** What the fleet pays beside the depots in a phase: spare pieces, less what quantity prices take off. */
    BigDecimal fleet(String phase) {
        BigDecimal sum = BigDecimal.ZERO;
        for (FleetCost cost : plan.fleetCosts()) {
            if (cost.phase().equals(phase)) {
                BigDecimal amount = BigDecimal.valueOf(cost.price()).multiply(BigDecimal.valueOf(cost.pieces()));
                sum = cost.kind() == FleetCost.Kind.SPARE_PIECES ? sum.add(amount) : sum.subtract(amount);
            }
        }
        return sum;
    }

    /** Pieces of an item that all depots buy in a phase. */
    int bought(String phase, String item) {
        return plan.depots().stream()
                .filter(depot -> depot.phase().equals(phase))
                .mapToInt(depot ->
                        Stock.all(depot).getOrDefault(item, new Stock(0, 0)).bought())
                .sum();
    }
}
