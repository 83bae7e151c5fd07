package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.solve.LinearPoint;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Finds prices of shared limits from the linear relaxations of the depots, which are quick: master and relaxations in turn until their bounds meet.
 *
 * <p>In a large fleet a sample of its depots comes first, with its share of every limit: what the whole fleet then has left to find is little.
 */
final class PriceSearch {

    private static final int MOST_ROUNDS = 40;

    /** Weight of the best prices so far against the master's. */
    private static final double SMOOTHING = 0.5;

    /** Cost of exceeding a budget by one. */
    static final double PENALTY = 100;

    /** Depots in a sample, and in the smallest fleet that is worth one. */
    private static final int SAMPLE = 24;

    private static final int WORTH_SAMPLING = 72;

    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final QuantityPrices quantities;
    private final FleetBound bounds;
    private final DepotPricing pricing;
    private final double openShare;

    /**
     * @param openShare share of the cost by which the bounds may be apart
     */
    PriceSearch(
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            QuantityPrices quantities,
            FleetBound bounds,
            DepotPricing pricing,
            double openShare) {
        this.rollouts = rollouts;
        this.limits = limits;
        this.quantities = quantities;
        this.bounds = bounds;
        this.pricing = pricing;
        this.openShare = openShare;
    }

    /**
     * The prices with the highest bound.
     *
     * @param bound of the fleet's linear relaxation
     * @param objective cost of its master at the end, not below the bound
     * @param answers of the depots to the prices
     * @param wanted of every limit, what the depots use of it in that master, those left out that give some
     */
    record Found(
            SharedPrices prices,
            double bound,
            double objective,
            List<LinearPoint> answers,
            Map<SharedLimit, Double> wanted) {}

    Found search() {
        List<Integer> all = IntStream.range(0, rollouts.size()).boxed().toList();
        SharedPrices start = bounds.valid(SharedPrices.NONE);
        if (all.size() >= WORTH_SAMPLING) {
            List<Integer> sample = IntStream.range(0, SAMPLE)
                    .mapToObj(i -> i * all.size() / SAMPLE)
                    .toList();
            start = search(sample, shares(sample), start, List.of()).prices();
        }
        return search(all, Map.of(), start, List.of());
    }

    /**
     * The same where much is known already.
     *
     * @param near prices to begin with
     * @param known plans in whole numbers, which are points of the relaxations as well
     */
    Found near(SharedPrices near, List<FleetColumn> known) {
        List<Integer> all = IntStream.range(0, rollouts.size()).boxed().toList();
        return search(all, Map.of(), near, known);
    }

    /** Of every limit the share of the depots it concerns that are in a sample. */
    private Map<SharedLimit, Double> shares(List<Integer> sample) {
        Map<SharedLimit, Double> shares = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            long concerned = rollouts.stream()
                    .filter(rollout -> rollout.limits().contains(limit))
                    .count();
            long sampled = sample.stream()
                    .filter(d -> rollouts.get(d).limits().contains(limit))
                    .count();
            shares.put(limit, concerned == 0 ? 0 : (double) sampled / concerned);
        }
        return shares;
    }

    private Found search(
            List<Integer> depots, Map<SharedLimit, Double> shares, SharedPrices start, List<FleetColumn> known) {
        FleetMaster master = new FleetMaster(limits, quantities, depots.size(), PENALTY, shares);
        List<FleetColumn> points = new ArrayList<>(known);
        SharedPrices tried = start;
        Found best = null;
        for (int round = 1; ; round++) {
            List<LinearPoint> answers = pricing.linear(depots, tried);
            double sum = 0;
            for (int i = 0; i < answers.size(); i++) {
                LinearPoint point = answers.get(i);
                points.add(new FleetColumn(i, point.cost(), point.use(), null));
                sum += point.bound();
            }
            double bound = bounds.of(tried, sum, shares);
            FleetMaster.Relaxed relaxed = master.relax(points);
            Map<SharedLimit, Double> wanted = wanted(points, relaxed.weights());
            best = best == null || bound > best.bound()
                    ? new Found(tried, bound, relaxed.objective(), answers, wanted)
                    : new Found(best.prices(), best.bound(), relaxed.objective(), best.answers(), wanted);
            if (round == MOST_ROUNDS
                    || relaxed.objective() - best.bound() <= openShare * Math.abs(relaxed.objective())) {
                return best;
            }
            tried = bounds.valid(round == 1 ? relaxed.prices() : mixed(limits, best.prices(), relaxed.prices()));
        }
    }

    private Map<SharedLimit, Double> wanted(List<FleetColumn> points, double[] weights) {
        Map<SharedLimit, Double> wanted = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            double sum = 0;
            for (int c = 0; c < weights.length; c++) {
                sum += weights[c] * Math.max(0, points.get(c).use(limit));
            }
            wanted.put(limit, sum);
        }
        return wanted;
    }

    /** The mean of the best prices so far and the master's, which keeps prices from swinging. */
    static SharedPrices mixed(List<SharedLimit> limits, SharedPrices center, SharedPrices latest) {
        Map<SharedLimit, Double> mixed = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            mixed.put(limit, SMOOTHING * center.of(limit) + (1 - SMOOTHING) * latest.of(limit));
        }
        return new SharedPrices(mixed);
    }
}
