package depot.optimizer.replay;

import java.util.List;
import java.util.SortedMap;

/**
 * Share of drawn days on which no trip lacked energy and every pack was full by the next day's start.
 *
 * @param fleet over the days of all depots
 * @param seasons the same by season
 */
public record TrialReport(
        TrialSettings settings, Share fleet, SortedMap<String, Share> seasons, List<DepotTrials> depots) {

    /** The days of one depot. */
    public record DepotTrials(String depot, Share all, SortedMap<String, Share> seasons) {}

    /** Days met of days drawn. */
    public record Share(int met, int trials) {
        /** Quantile of the normal distribution for 95 % in the middle. */
        private static final double Z = 1.959963984540054;

        /** Share of days met, 0 without any day. */
        public double share() {
            return trials == 0 ? 0 : (double) met / trials;
        }

        /** Lower end of the Wilson score interval at 95 %. */
        public double lower() {
            return trials == 0 ? 0 : Math.max(0, centre() - halfWidth());
        }

        /** Upper end of the Wilson score interval at 95 %. */
        public double upper() {
            return trials == 0 ? 1 : Math.min(1, centre() + halfWidth());
        }

        Share plus(Share other) {
            return new Share(met + other.met, trials + other.trials);
        }

        private double centre() {
            return (share() + Z * Z / (2 * trials)) / (1 + Z * Z / trials);
        }

        private double halfWidth() {
            double p = share();
            double n = trials;
            return Z / (1 + Z * Z / n) * Math.sqrt(p * (1 - p) / n + Z * Z / (4 * n * n));
        }
    }
}
