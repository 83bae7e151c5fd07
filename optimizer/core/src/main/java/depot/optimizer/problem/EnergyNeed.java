package depot.optimizer.problem;

import org.apache.commons.math3.distribution.LogNormalDistribution;

/**
 * The energy that must be planned for, at a quantile of its spread.
 *
 * <p>The needs of a trip's stops vary independently of each other, each with the same coefficient of variation. Their sum is taken as
 * lognormal with the sum's mean m and standard deviation s = spread * sqrt(sum of squared means): it cannot be negative, and its tail is on the
 * side of more work. A longer trip therefore has a smaller relative spread than a single stop.
 *
 * @param quantile share of days covered, 0 to 1 exclusive
 * @param spread coefficient of variation of one stop, 0: every day is the mean day
 */
public record EnergyNeed(double quantile, double spread) {

    /** The quantile of the sum of independent needs, in the unit of their means. */
    public double of(double[] means) {
        double mean = 0;
        double squares = 0;
        for (double stop : means) {
            mean += stop;
            squares += stop * stop;
        }
        if (mean == 0 || spread == 0) {
            return mean;
        }
        double relative = spread * Math.sqrt(squares) / mean;
        double sigma = Math.sqrt(Math.log1p(relative * relative));
        double mu = Math.log(mean) - sigma * sigma / 2;
        // Nothing is drawn at random: without a generator of its own the distribution is made in a hundredth of the
        // time.
        return new LogNormalDistribution(null, mu, sigma).inverseCumulativeProbability(quantile);
    }
}
