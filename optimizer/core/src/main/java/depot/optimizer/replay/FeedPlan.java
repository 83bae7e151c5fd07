package depot.optimizer.replay;

import depot.optimizer.plan.UnitFeed;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * How much a unit may have drawn since the cycle's start, by minute: what the plan has it draw in the slices begun so far. Energy that was not drawn
 * in its slice, because whole chargers did not fit or charging ran out slowly, may be drawn later; nothing is drawn before its slice. Once the last
 * planned slice has begun nothing is held back.
 */
final class FeedPlan {
    private final double[] allowedWh = new double[BaseLoads.DAY];

    /** Lays out the feeds of one circuit. */
    FeedPlan(List<UnitFeed> feeds, int startMinute) {
        double sum = 0;
        List<UnitFeed> inOrder = feeds.stream()
                .filter(feed -> feed.wattHours() > 0)
                .sorted(Comparator.comparingInt(UnitFeed::fromMinute))
                .toList();
        for (UnitFeed feed : inOrder) {
            sum += feed.wattHours();
            int from = Math.max(0, Math.min(BaseLoads.DAY, feed.fromMinute() - startMinute));
            boolean last = feed.equals(inOrder.get(inOrder.size() - 1));
            Arrays.fill(allowedWh, from, BaseLoads.DAY, last ? Double.POSITIVE_INFINITY : sum);
        }
    }

    double allowedWh(int index) {
        return allowedWh[index];
    }
}
