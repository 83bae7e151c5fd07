package depot.optimizer.fleet;

import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The plans found so far, some of each depot. Plans that the replay fails are never in it. */
final class PlanPool {

    /** Plans of a depot that are kept when the pool is trimmed. */
    private static final int MOST_OF_DEPOT = 12;

    private final List<List<FleetColumn>> byDepot = new ArrayList<>();

    PlanPool(int depots) {
        for (int d = 0; d < depots; d++) {
            byDepot.add(new ArrayList<>());
        }
    }

    /** Adds a plan, unless the replay fails it or one that costs no more uses the same. */
    Optional<FleetColumn> add(int depot, ProvenDepot proven) {
        FleetColumn column =
                new FleetColumn(depot, proven.rollout().cost(), proven.rollout().use(), proven);
        boolean known = byDepot.get(depot).stream()
                .anyMatch(old -> old.use().equals(column.use()) && old.cost() <= column.cost());
        if (known || !proven.replayed()) {
            return Optional.empty();
        }
        byDepot.get(depot).add(column);
        return Optional.of(column);
    }

    /** All plans, depot by depot. */
    List<FleetColumn> columns() {
        return byDepot.stream().flatMap(List::stream).toList();
    }

    boolean coversAllDepots() {
        return byDepot.stream().noneMatch(List::isEmpty);
    }

    /** Keeps the cheapest plans of each depot at some prices, and those in use. */
    void trim(SharedPrices prices, List<FleetColumn> inUse) {
        Set<FleetColumn> kept = Collections.newSetFromMap(new IdentityHashMap<>());
        kept.addAll(inUse);
        for (List<FleetColumn> plans : byDepot) {
            List<FleetColumn> byCost = new ArrayList<>(plans);
            byCost.sort(Comparator.comparingDouble(plan -> plan.cost() + prices.of(plan.use())));
            kept.addAll(byCost.subList(0, Math.min(MOST_OF_DEPOT, byCost.size())));
            plans.removeIf(plan -> !kept.contains(plan));
        }
    }
}
