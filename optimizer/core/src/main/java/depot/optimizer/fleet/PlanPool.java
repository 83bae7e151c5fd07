package depot.optimizer.fleet;

import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** The plans found so far, some of each depot. Those that the replay fails stand in only where a depot has no other. */
final class PlanPool {

    /** Plans of a depot that are kept when the pool is trimmed. */
    private static final int MOST_OF_DEPOT = 12;

    private final List<List<FleetColumn>> byDepot = new ArrayList<>();
    private final List<List<FleetColumn>> failed = new ArrayList<>();

    PlanPool(int depots) {
        for (int d = 0; d < depots; d++) {
            byDepot.add(new ArrayList<>());
            failed.add(new ArrayList<>());
        }
    }

    /** Adds a plan, unless one that costs no more uses the same. */
    void add(int depot, ProvenDepot proven) {
        RolloutPlan plan = proven.rollout();
        FleetColumn column = new FleetColumn(depot, plan.cost(), plan.use(), proven);
        List<FleetColumn> alike = (proven.replayed() ? byDepot : failed).get(depot);
        if (alike.stream().noneMatch(old -> old.use().equals(column.use()) && old.cost() <= column.cost())) {
            alike.add(column);
        }
    }

    /** All plans, depot by depot. */
    List<FleetColumn> columns() {
        List<FleetColumn> columns = new ArrayList<>();
        for (int d = 0; d < byDepot.size(); d++) {
            columns.addAll(byDepot.get(d).isEmpty() ? failed.get(d) : byDepot.get(d));
        }
        return columns;
    }

    /**
     * How far each depot's cheapest plan is above its bound at some prices; infinite where it has none.
     *
     * @param bounds one for each depot
     */
    double[] above(SharedPrices prices, List<Double> bounds) {
        double[] above = new double[byDepot.size()];
        for (int d = 0; d < above.length; d++) {
            above[d] = byDepot.get(d).stream()
                            .mapToDouble(plan -> plan.proven().cost(prices))
                            .min()
                            .orElse(Double.POSITIVE_INFINITY)
                    - bounds.get(d);
        }
        return above;
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
