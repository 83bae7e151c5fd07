package depot.optimizer.replay;

import depot.optimizer.plan.UnitFeed;
import java.util.Arrays;
import java.util.List;

/** What a unit may draw over a cycle: for each minute, its slice and the energy it may have drawn since that slice's start. */
final class FeedPlan {
    private final int[] slice = new int[BaseLoads.DAY];
    private final double[] allowedWh = new double[BaseLoads.DAY];
    private final double[] plannedWh;

    /**
     * Lays out the feeds of one circuit.
     *
     * @param pacingMinutes length of the pacing intervals, which start at multiples of it after midnight and never cross a slice's end
     */
    FeedPlan(List<UnitFeed> feeds, int startMinute, int pacingMinutes) {
        plannedWh = new double[feeds.size() + 1];
        Arrays.fill(slice, feeds.size());
        for (int k = 0; k < feeds.size(); k++) {
            UnitFeed feed = feeds.get(k);
            plannedWh[k] = feed.wattHours();
            double perMinute = feed.wattHours() / Math.max(1, feed.toMinute() - feed.fromMinute());
            int from = Math.max(feed.fromMinute(), startMinute);
            int to = Math.min(feed.toMinute(), startMinute + BaseLoads.DAY);
            for (int t = from; t < to; t++) {
                int intervalEnd = Math.min(feed.toMinute(), (t / pacingMinutes + 1) * pacingMinutes);
                slice[t - startMinute] = k;
                allowedWh[t - startMinute] = perMinute * (intervalEnd - feed.fromMinute());
            }
        }
    }

    /** Number of the slice of a minute; minutes without a feed share the last number. */
    int slice(int index) {
        return slice[index];
    }

    double plannedWh(int sliceNumber) {
        return plannedWh[sliceNumber];
    }

    double allowedWh(int index) {
        return allowedWh[index];
    }
}
