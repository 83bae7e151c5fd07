package depot.optimizer.fleet;

import depot.optimizer.fleet.DepotPricing.Question;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntToDoubleFunction;

/**
 * What a choice of plans leaves of the limits, offered to single depots: the best that each can do with what it has and all that is left. Prices alone
 * never ask for such a plan where it is not the best at any price.
 */
final class LeftOver {

    /** Depots that are asked at once. */
    private static final int MOST_DEPOTS = 24;

    private static final Set<Kind> LEFT = Set.of(Kind.BUDGET, Kind.REGION_BUDGET, Kind.DELIVERY);

    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final FleetBound bounds;

    LeftOver(List<DepotRollout> rollouts, List<SharedLimit> limits, FleetBound bounds) {
        this.rollouts = rollouts;
        this.limits = limits;
        this.bounds = bounds;
    }

    /**
     * Questions to the depots that have most to gain.
     *
     * @param prices at which the gain is guessed
     * @param depotBounds no plan of a depot costs less at these prices
     */
    List<Question> questions(
            FleetMaster.Choice choice, SharedPrices prices, List<Double> depotBounds, IntToDoubleFunction allowed) {
        Map<SharedLimit, Double> left = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            if (LEFT.contains(limit.kind())) {
                double used = choice.columns().stream()
                        .mapToDouble(column -> column.use(limit))
                        .sum();
                left.put(limit, Math.max(0, limit.most() - used));
            }
        }
        Comparator<FleetColumn> byGain = Comparator.comparingDouble(
                column -> depotBounds.get(column.depot()) - column.cost() - prices.of(column.use()));
        List<Question> questions = new ArrayList<>();
        choice.columns().stream().sorted(byGain).limit(MOST_DEPOTS).forEach(column -> {
            int depot = column.depot();
            questions.add(new Question(depot, free(prices), allowed.applyAsDouble(depot), ranges(column, left)));
        });
        return questions;
    }

    /** What is left costs nothing; where crews work and what moves stays as it is. */
    private SharedPrices free(SharedPrices prices) {
        Map<SharedLimit, Double> kept = new LinkedHashMap<>();
        limits.stream()
                .filter(limit -> !LEFT.contains(limit.kind()))
                .forEach(limit -> kept.put(limit, prices.of(limit)));
        return bounds.valid(new SharedPrices(kept));
    }

    private Map<SharedLimit, UseRange> ranges(FleetColumn column, Map<SharedLimit, Double> left) {
        Map<SharedLimit, UseRange> ranges = new LinkedHashMap<>();
        for (SharedLimit limit : rollouts.get(column.depot()).limits()) {
            double use = column.use(limit);
            if (left.containsKey(limit)) {
                ranges.put(limit, UseRange.upTo(use + left.get(limit)));
            } else if (limit.kind() != Kind.QUANTITY) {
                ranges.put(limit, UseRange.exactly(use));
            }
        }
        return ranges;
    }
}
