package depot.optimizer.fleet;

import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.BoundProof.DepotBound;
import depot.optimizer.plan.BoundProof.PricedLimit;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.QuantityPrices.Tier;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The Lagrangian bound: sum of the depots' bounds at some prices, less what the limits are worth at them. The price of pieces that count towards a
 * quantity price is such that no tier takes off more than that: the bound is as if every piece had the best tier's price, whatever their number.
 */
final class FleetBound {

    private final List<SharedLimit> limits;
    private final QuantityPrices quantities;

    FleetBound(List<SharedLimit> limits, QuantityPrices quantities) {
        this.limits = limits;
        this.quantities = quantities;
    }

    /** Prices for which the bound holds: those of quantities follow from those of the budgets. */
    SharedPrices valid(SharedPrices prices) {
        Map<SharedLimit, Double> valid = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            double price = prices.of(limit);
            valid.put(limit, limit.kind() == Kind.QUANTITY ? best(limit, prices) : price);
        }
        return new SharedPrices(valid);
    }

    private double best(SharedLimit quantity, SharedPrices prices) {
        double budget = limits.stream()
                .filter(limit -> limit.kind() == Kind.BUDGET && limit.phase().equals(quantity.phase()))
                .mapToDouble(prices::of)
                .sum();
        return quantities.tiers(quantity).stream()
                .mapToDouble(tier -> worth(tier, budget))
                .max()
                .orElse(0);
    }

    private static double worth(Tier tier, double budgetPrice) {
        return tier.presentOff() + tier.off() * budgetPrice;
    }

    /** The bound. */
    double of(SharedPrices prices, double depotBounds) {
        return of(prices, depotBounds, Map.of());
    }

    /**
     * The bound for some of the depots.
     *
     * @param shares what they have of each limit; all of it where none is given
     */
    double of(SharedPrices prices, double depotBounds, Map<SharedLimit, Double> shares) {
        double bound = depotBounds;
        for (SharedLimit limit : limits) {
            bound -= prices.of(limit) * limit.most() * shares.getOrDefault(limit, 1.0);
        }
        return bound;
    }

    /** What the bound is made of. */
    BoundProof proof(SharedPrices prices, List<String> depots, List<Double> bounds, boolean oneModel) {
        List<PricedLimit> priced = new ArrayList<>();
        for (SharedLimit limit : limits) {
            priced.add(new PricedLimit(limit.name(), limit.equation(), limit.most(), prices.of(limit)));
        }
        List<DepotBound> ofDepots = new ArrayList<>();
        for (int d = 0; d < depots.size(); d++) {
            ofDepots.add(new DepotBound(depots.get(d), bounds.get(d)));
        }
        return new BoundProof(List.copyOf(priced), List.copyOf(ofDepots), oneModel);
    }
}
