package depot.optimizer.rerun;

import depot.optimizer.fleet.VariedRollout;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.BoundProof.DepotBound;
import depot.optimizer.plan.BoundProof.PricedLimit;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.sweep.FleetAssembly;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The bound of a changed fleet at the prices of an earlier certificate. It holds at any prices that are not below 0 (Lagrangian relaxation), as long as
 * those of quantities are what their tiers take off, which is so where tiers and phases have not changed.
 */
final class EarlierPrices {

    private EarlierPrices() {}

    /** What the bound is made of; empty: a limit has no price that would do. */
    static Optional<BoundProof> proof(Scenario there, FleetAssembly assembly, BoundProof earlier) {
        Map<SharedLimit, Double> prices = new LinkedHashMap<>();
        for (SharedLimit limit : assembly.limits()) {
            Optional<Double> price = earlier.limits().stream()
                    .filter(priced -> priced.limit().equals(limit.name()))
                    .map(PricedLimit::price)
                    .findFirst();
            if (price.isEmpty() && limit.kind() == Kind.QUANTITY) {
                return Optional.empty();
            }
            // A crew that no longer has to change takes no price below 0.
            double usable = price.map(found -> limit.equation() ? found : Math.max(0, found))
                    .orElse(0.0);
            prices.put(limit, usable);
        }
        List<DepotBound> depots = new ArrayList<>();
        for (Depot depot : there.depots()) {
            Map<SharedLimit, Double> own = new LinkedHashMap<>(prices);
            own.keySet().retainAll(assembly.rollout(depot.id()).limits());
            double bound = VariedRollout.plan(there, assembly.rollout(depot.id()), new SharedPrices(own), Map.of())
                    .bound();
            depots.add(new DepotBound(depot.id(), bound));
        }
        return Optional.of(new BoundProof(
                prices.entrySet().stream()
                        .map(priced -> new PricedLimit(
                                priced.getKey().name(),
                                priced.getKey().equation(),
                                priced.getKey().most(),
                                priced.getValue()))
                        .toList(),
                depots,
                false));
    }
}
