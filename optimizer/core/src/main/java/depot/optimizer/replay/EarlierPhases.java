package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a depot has from the phases before.
 *
 * @param plans of the same depot, in order
 */
record EarlierPhases(List<DepotPlan> plans) {

    /** Nothing comes before the first phase. */
    static final EarlierPhases NONE = new EarlierPhases(List.of());

    /** Those of a plan: the fleet's plans of its depot up to it. */
    static EarlierPhases of(List<DepotPlan> fleet, DepotPlan plan) {
        List<DepotPlan> before = new ArrayList<>();
        for (DepotPlan other : fleet) {
            if (other.depot().equals(plan.depot())) {
                if (other.phase().equals(plan.phase())) {
                    break;
                }
                before.add(other);
            }
        }
        return new EarlierPhases(List.copyOf(before));
    }

    /** The plan of the phase before. */
    Optional<DepotPlan> last() {
        return plans.isEmpty() ? Optional.empty() : Optional.of(plans.get(plans.size() - 1));
    }

    boolean built(String circuit) {
        return last().map(plan -> plan.circuitsBuilt().contains(circuit)).orElse(false);
    }

    boolean upgraded() {
        return last().map(DepotPlan::supplyUpgraded).orElse(false);
    }

    /** Pieces of a type, packs included, in the phase before. */
    int pieces(String item) {
        return last().map(Stock::all)
                .map(stocks -> stocks.getOrDefault(item, new Stock(0, 0)).count())
                .orElse(0);
    }

    /** Pieces of a type bought so far. */
    int bought(String item) {
        return plans.stream()
                .map(Stock::all)
                .mapToInt(stocks -> stocks.getOrDefault(item, new Stock(0, 0)).bought())
                .sum();
    }

    /** Pieces that came from other depots, less those that went there, by type; moves of the plan itself included. */
    int moved(DepotPlan plan, String item) {
        int moved = 0;
        List<DepotPlan> all = new ArrayList<>(plans);
        all.add(plan);
        for (DepotPlan each : all) {
            moved += each.moves().stream()
                    .filter(m -> m.item().equals(item))
                    .mapToInt(MovedPieces::count)
                    .sum();
        }
        return moved;
    }

    /** Every type that was there. */
    Map<String, Stock> lastStock() {
        return last().map(Stock::all).orElse(Map.of());
    }
}
