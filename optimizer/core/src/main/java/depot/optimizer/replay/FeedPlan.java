package depot.optimizer.replay;

import depot.optimizer.plan.UnitFeed;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * How much a unit may have drawn since the cycle's start, by minute: what the plan has it draw in the slices begun so far. Energy that was not drawn
 * in its slice, because whole chargers did not fit or charging ran out slowly, may be drawn later. Where no later power is cheaper, nothing is held
 * back.
 */
final class FeedPlan {
    private final double[] allowedWh = new double[BaseLoads.DAY];

    /** Lays out the feeds of one circuit. */
    FeedPlan(List<UnitFeed> feeds, PriceLine prices, int startMinute) {
        double sum = 0;
        List<UnitFeed> inOrder = feeds.stream()
                .filter(feed -> feed.wattHours() > 0)
                .sorted(Comparator.comparingInt(UnitFeed::fromMinute))
                .toList();
        for (UnitFeed feed : inOrder) {
            sum += feed.wattHours();
            int from = Math.max(0, Math.min(BaseLoads.DAY, feed.fromMinute() - startMinute));
            Arrays.fill(allowedWh, from, BaseLoads.DAY, sum);
        }
        for (PriceLine.Span span : prices.cheapestOfWhatIsLeft()) {
            Arrays.fill(
                    allowedWh,
                    span.fromMinute() - startMinute,
                    span.toMinute() - startMinute,
                    Double.POSITIVE_INFINITY);
        }
    }

    double allowedWh(int index) {
        return allowedWh[index];
    }
}
