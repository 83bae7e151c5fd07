package depot.optimizer.replay;

/** Demand as it is billed: the highest average over intervals of the clock. */
final class DemandMeter {
    private DemandMeter() {}

    /**
     * Highest average in watts.
     *
     * @param watts by minute of the cycle
     * @param startMinute of the cycle, after midnight; the interval that the cycle's ends share is one interval
     */
    static double highestAverage(double[] watts, int startMinute, int intervalMinutes) {
        int intervals = (watts.length + intervalMinutes - 1) / intervalMinutes;
        double[] sums = new double[intervals];
        for (int i = 0; i < watts.length; i++) {
            sums[(startMinute + i) % watts.length / intervalMinutes] += watts[i];
        }
        double highest = 0;
        for (double sum : sums) {
            highest = Math.max(highest, sum / intervalMinutes);
        }
        return highest;
    }
}
