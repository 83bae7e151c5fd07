package depot.optimizer.fleet;

import depot.optimizer.fleet.LeftBehind.OldDepot;
import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.plan.BoundProof.DepotBound;
import depot.optimizer.plan.BoundProof.PricedLimit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RepricedPlan;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the search for a fleet's plan begins: with what an earlier one has left behind, as far as that holds here, or with nothing.
 *
 * <ul>
 *   <li>Prices: those of limits of the same name.
 *   <li>Plans of a depot whose problem is the same in every phase and that shares the same limits, whatever these allow: as they are, with their replays.
 *   <li>A bound of such a depot, if what concerns it has the very same prices: it is about the same plans at the same cost.
 *   <li>Plans of another depot, if asked for: at this problem's prices, and only those that the replay passes.
 * </ul>
 */
final class FleetStart {

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final Optional<LeftBehind> left;
    private final Touched touched;
    private final SharedPrices prices;
    private final Map<String, Double> oldPrices = new LinkedHashMap<>();
    private final Map<String, Double> oldBounds = new LinkedHashMap<>();

    FleetStart(
            Scenario scenario,
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            FleetBound bounds,
            Optional<LeftBehind> left,
            Touched touched) {
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.left = left;
        this.touched = touched;
        left.ifPresent(old -> {
            for (PricedLimit limit : old.proof().limits()) {
                oldPrices.put(limit.limit(), limit.price());
            }
            for (DepotBound depot : old.proof().depots()) {
                oldBounds.put(depot.depot(), depot.bound());
            }
        });
        Map<SharedLimit, Double> named = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            double price = oldPrices.getOrDefault(limit.name(), 0.0);
            named.put(limit, limit.equation() ? price : Math.max(0, price));
        }
        prices = bounds.valid(new SharedPrices(named));
    }

    /** Whether anything was left behind. */
    boolean given() {
        return left.isPresent();
    }

    /** Prices to begin with; where nothing was left behind, those at which no limit has one of its own. */
    SharedPrices prices() {
        return prices;
    }

    /** What the earlier fleet cost. */
    double cost() {
        return left.map(LeftBehind::cost).orElse(0.0);
    }

    /** Plans of a depot, all of which the replay has passed. */
    List<ProvenDepot> plans(int depot) {
        Optional<OldDepot> old = old(depot);
        if (old.isEmpty()) {
            return List.of();
        }
        if (same(depot)) {
            DepotRollout rollout = rollouts.get(depot);
            return old.get().plans().stream()
                    .map(plan -> new ProvenDepot(
                            RolloutPlan.of(rollout, plan.rollout().phases()), plan.replays(), plan.bound()))
                    .toList();
        }
        return touched == Touched.LEFT_OUT
                ? List.of()
                : old.get().plans().stream()
                        .map(plan ->
                                repriced(rollouts.get(depot), plan.rollout().phases()))
                        .filter(ProvenDepot::replayed)
                        .toList();
    }

    private ProvenDepot repriced(DepotRollout rollout, List<DepotPlan> phases) {
        List<DepotPlan> plans = new ArrayList<>();
        for (int p = 0; p < phases.size(); p++) {
            Optional<DepotPlan> before = p == 0 ? Optional.empty() : Optional.of(plans.get(p - 1));
            plans.add(RepricedPlan.of(rollout.phases().get(p), p + 1, phases.get(p), before));
        }
        return LeftBehind.replayed(scenario, rollout, plans);
    }

    /** No plan of a depot costs less at {@link #prices}; empty where that is not known. */
    OptionalDouble bound(int depot) {
        DepotRollout rollout = rollouts.get(depot);
        Double bound = oldBounds.get(rollout.depot().id());
        boolean holds = bound != null
                && same(depot)
                && rollout.limits().stream()
                        .allMatch(limit -> oldPrices.getOrDefault(limit.name(), 0.0) == prices.of(limit));
        return holds ? OptionalDouble.of(bound) : OptionalDouble.empty();
    }

    /** What such a bound was in the earlier fleet, whether it holds here or not; 0 for a new depot. */
    double oldBound(int depot) {
        return oldBounds.getOrDefault(rollouts.get(depot).depot().id(), 0.0);
    }

    /** Whether a depot's problem is what it was; how much there is of shared limits is no part of it. */
    private boolean same(int depot) {
        DepotRollout now = rollouts.get(depot);
        return old(depot)
                .map(OldDepot::rollout)
                .filter(before ->
                        before.phases().equals(now.phases()) && kinds(before).equals(kinds(now)))
                .isPresent();
    }

    private static List<String> kinds(DepotRollout rollout) {
        return rollout.limits().stream().map(SharedLimit::name).toList();
    }

    private Optional<OldDepot> old(int depot) {
        return left.flatMap(each -> each.depot(rollouts.get(depot).depot().id()));
    }
}
