package depot.optimizer.fleet;

import depot.optimizer.mip.Limits;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.LinearPoint;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans depots that share limits, by prices on these (Dantzig and Wolfe 1960; smoothed after Wentges 1997; both from memory).
 *
 * <ol>
 *   <li>Prices come from the linear relaxations of the depots, which are quick: master and relaxations are solved in turn until their bounds meet.
 *   <li>At these prices every depot is planned in whole numbers. The bounds of these searches give the fleet's bound; their plans, replayed, and those
 *       at somewhat lower and higher prices are the pool.
 *   <li>A master in whole numbers chooses from the pool. While the gap is open, its relaxation gives new prices.
 * </ol>
 */
final class SharedFleet {

    /** Share of the gap asked for that a depot's own search may leave. */
    private static final double DEPOT_SHARE = 0.4;

    /** Share of the gap asked for that the prices' search may leave. */
    private static final double PRICES_SHARE = 0.1;

    private static final int MOST_LINEAR_ROUNDS = 40;
    private static final int MOST_ROUNDS = 12;

    /** Weight of the best prices so far against the master's. */
    private static final double SMOOTHING = 0.5;

    /** Prices tried beside the best ones, as multiples. */
    private static final double[] AROUND = {1, 0.8, 1.25};

    /** Cost of exceeding a budget by one. */
    private static final double PENALTY = 100;

    private static final long MASTER_NODES = 20_000;

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final ProgressListener progress;
    private final FleetMaster master;
    private final FleetBound bounds;
    private final List<FleetColumn> pool = new ArrayList<>();
    private double bestBound = Double.NEGATIVE_INFINITY;
    private BoundProof proof;
    private FleetMaster.Choice best;

    SharedFleet(Scenario scenario, List<DepotRollout> rollouts, ProgressListener progress) {
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.progress = progress;
        limits = SharedLimits.of(scenario);
        QuantityPrices quantities = new QuantityPrices(scenario);
        master = new FleetMaster(limits, quantities, rollouts.size(), PENALTY);
        bounds = new FleetBound(limits, quantities);
    }

    /**
     * The fleet's plan with its bound.
     *
     * @throws NothingFitsException when no plan that keeps the shared limits is found
     */
    FleetPlan solve() {
        try (DepotPricing pricing = new DepotPricing(scenario, rollouts, bounds.valid(SharedPrices.NONE))) {
            Guide guide = linearPrices(pricing);
            double allowed = DEPOT_SHARE * gap() * Math.abs(guide.objective()) / rollouts.size();
            SharedPrices prices = guide.prices();
            for (int round = 1; round <= MOST_ROUNDS; round++) {
                for (double multiple : round == 1 ? AROUND : new double[] {1}) {
                    addPlans(pricing, bounds.valid(times(prices, multiple)), allowed);
                }
                settleCrews(pricing, guide.prices(), allowed);
                double open = open();
                double bound = bestBound;
                choose();
                if (open() <= gap() || (open() >= open && bestBound <= bound && round > 1)) {
                    break;
                }
                FleetMaster.Relaxed relaxed = master.relax(pool);
                prices = best == null && round > 1 ? times(relaxed.prices(), 1 + round) : relaxed.prices();
            }
            if (best == null) {
                throw new LeastUse(scenario, limits, pricing, bounds).explained();
            }
        }
        return FinishedFleet.of(scenario, rollouts, best, bestBound, proof);
    }

    private record Guide(SharedPrices prices, double objective) {}

    private double gap() {
        return scenario.solve().relativeGap();
    }

    private Guide linearPrices(DepotPricing pricing) {
        List<FleetColumn> points = new ArrayList<>();
        List<LinearPoint> answers = pricing.first();
        SharedPrices best = bounds.valid(SharedPrices.NONE);
        SharedPrices tried = best;
        double bound = Double.NEGATIVE_INFINITY;
        double objective = 0;
        for (int round = 1; round <= MOST_LINEAR_ROUNDS; round++) {
            double sum = 0;
            for (int d = 0; d < answers.size(); d++) {
                LinearPoint point = answers.get(d);
                points.add(new FleetColumn(d, point.cost(), point.use(), null));
                sum += point.bound();
            }
            double now = bounds.of(tried, sum);
            if (now > bound) {
                bound = now;
                best = tried;
            }
            FleetMaster.Relaxed relaxed = master.relax(points);
            objective = relaxed.objective();
            if (objective - bound <= PRICES_SHARE * gap() * Math.abs(objective)) {
                break;
            }
            tried = bounds.valid(round == 1 ? relaxed.prices() : between(best, relaxed.prices()));
            answers = pricing.linear(tried);
        }
        progress.pricesFound(bound, objective);
        return new Guide(best, objective);
    }

    private SharedPrices between(SharedPrices center, SharedPrices latest) {
        Map<SharedLimit, Double> mixed = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            mixed.put(limit, SMOOTHING * center.of(limit) + (1 - SMOOTHING) * latest.of(limit));
        }
        return new SharedPrices(mixed);
    }

    private SharedPrices times(SharedPrices prices, double factor) {
        Map<SharedLimit, Double> scaled = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            boolean kept = limit.kind() == Kind.CREW || limit.kind() == Kind.MOVES;
            scaled.put(limit, prices.of(limit) * (kept ? 1 : factor));
        }
        return new SharedPrices(scaled);
    }

    private void addPlans(DepotPricing pricing, SharedPrices prices, double allowed) {
        List<ProvenDepot> answers = pricing.plans(prices, allowed);
        answers.forEach(new Adder()::add);
        List<Double> depotBounds = answers.stream().map(ProvenDepot::bound).toList();
        double bound = bounds.of(
                prices, depotBounds.stream().mapToDouble(Double::doubleValue).sum());
        if (bound > bestBound) {
            bestBound = bound;
            proof = bounds.proof(
                    prices,
                    rollouts.stream().map(rollout -> rollout.depot().id()).toList(),
                    depotBounds);
        }
    }

    /** Adds answers in the order of the depots; plans that the replay fails or that are there already are left out. */
    private final class Adder {
        private int depot;

        private void add(ProvenDepot proven) {
            FleetColumn column = new FleetColumn(
                    depot++, proven.rollout().cost(), proven.rollout().use(), proven);
            boolean known = pool.stream()
                    .anyMatch(old -> old.depot() == column.depot()
                            && old.use().equals(column.use())
                            && old.cost() <= column.cost());
            if (!known && proven.replayed()) {
                pool.add(column);
            }
        }
    }

    /** Sends each crew that has several bases to the one where the pool's relaxation wants it most, and plans the depots with that. */
    private void settleCrews(DepotPricing pricing, SharedPrices prices, double allowed) {
        List<SharedLimit> crews =
                limits.stream().filter(limit -> limit.kind() == Kind.CREW).toList();
        if (crews.isEmpty()) {
            return;
        }
        double[] weights = master.relax(pool).weights();
        List<Map<SharedLimit, Boolean>> settled = new CrewPlaces(rollouts, crews, pool).settled(weights);
        pricing.settled(prices, allowed, settled).forEach(new Adder()::add);
    }

    private void choose() {
        Limits work = new Limits(
                PRICES_SHARE * gap(),
                MASTER_NODES,
                scenario.solve().timeLimitSeconds(),
                scenario.solve().seed());
        Optional<FleetMaster.Choice> choice = master.choose(pool, work);
        if (choice.isPresent() && (best == null || choice.get().cost() < best.cost())) {
            best = choice.get();
        }
        if (best != null) {
            progress.fleetPlan(Certificate.of(best.cost(), bestBound, gap()));
        }
    }

    /** The gap of the best plan so far, infinite without one. */
    private double open() {
        return best == null ? Double.POSITIVE_INFINITY : (best.cost() - bestBound) / Math.abs(best.cost());
    }
}
