package depot.optimizer.fleet;

import depot.optimizer.solve.LinearPoint;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Makes use of what an earlier search has left behind: first at its prices, where only depots that have changed are planned; then at new prices, where
 * depots are planned, those with most to gain first, until the gap is closed. Bounds are those of the fleet's own depots at the prices in the proof.
 */
final class StartSteps {

    /** Share of the depots up to which those that have changed are planned at the old prices. */
    private static final double MOST_CHANGED = 0.5;

    /** Depots that are planned before the gap is looked at again: this many, or this share of all. */
    private static final int FEWEST = 4;

    private static final double SHARE = 0.25;

    private final FleetStart start;
    private final FleetStanding standing;
    private final DepotPricing pricing;
    private final int depots;

    StartSteps(FleetStart start, FleetStanding standing, DepotPricing pricing, int depots) {
        this.start = start;
        this.standing = standing;
        this.pricing = pricing;
        this.depots = depots;
    }

    /** Fills the pool, and looks how far it comes with the old prices. */
    void atOldPrices() {
        List<Integer> changed = new ArrayList<>();
        List<Double> bounds = new ArrayList<>();
        for (int d = 0; d < depots; d++) {
            int depot = d;
            start.plans(d).forEach(plan -> standing.pool().add(depot, plan));
            OptionalDouble bound = start.bound(d);
            bounds.add(bound.orElse(Double.NEGATIVE_INFINITY));
            if (bound.isEmpty()) {
                changed.add(d);
            }
        }
        if (changed.size() > MOST_CHANGED * depots) {
            return;
        }
        standing.share(
                start.cost(),
                IntStream.range(0, depots).mapToObj(start::oldBound).toList());
        pricing.linear(changed, start.prices());
        plan(changed, start.prices(), bounds);
        standing.choose();
    }

    /** Plans depots at new prices, as many as it takes, beginning where the cheapest plan of the pool is furthest above the relaxation. */
    void atNewPrices(PriceSearch.Found found) {
        SharedPrices prices = found.prices();
        standing.share(found);
        List<Double> bounds =
                new ArrayList<>(found.answers().stream().map(LinearPoint::bound).toList());
        standing.bounded(prices, bounds);
        standing.choose();
        double[] gains = standing.pool().above(prices, bounds);
        List<Integer> order = IntStream.range(0, depots)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer d) -> gains[d]).reversed())
                .toList();
        int size = Math.max(FEWEST, (int) Math.ceil(SHARE * depots));
        for (int from = 0; from < depots && !standing.closed(); from += size) {
            plan(order.subList(from, Math.min(depots, from + size)), prices, bounds);
            standing.choose();
        }
    }

    /** Plans some depots, and takes note of the fleet's bound with theirs in place of what was known of them. */
    private void plan(List<Integer> some, SharedPrices prices, List<Double> bounds) {
        List<ProvenDepot> answers = pricing.together(standing.questions(some, prices));
        for (int i = 0; i < some.size(); i++) {
            int depot = some.get(i);
            standing.pool().add(depot, answers.get(i));
            bounds.set(depot, Math.max(bounds.get(depot), FleetStanding.bound(answers.get(i), prices)));
        }
        standing.bounded(prices, bounds);
    }
}
