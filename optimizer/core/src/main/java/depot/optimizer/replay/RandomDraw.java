package depot.optimizer.replay;

import org.apache.commons.math3.random.RandomGenerator;

/** Draws each stop's energy from its lognormal distribution (the mean of the tables, the scenario's spread), and late returns. */
final class RandomDraw implements Draw {
    private final RandomGenerator random;
    private final LateReturns late;
    private final double sigma;

    RandomDraw(RandomGenerator random, double spread, LateReturns late) {
        this.random = random;
        this.late = late;
        this.sigma = Math.sqrt(Math.log1p(spread * spread));
    }

    @Override
    public double[] usedWh(DayCase.Trip trip, Needs need) {
        double[] means = need.meanWh();
        double[] used = new double[means.length];
        for (int i = 0; i < used.length; i++) {
            // E[exp(mu + sigma z)] is the mean for mu = ln mean - sigma^2 / 2.
            used[i] = means[i] > 0 ? means[i] * Math.exp(sigma * random.nextGaussian() - sigma * sigma / 2) : 0;
        }
        return used;
    }

    @Override
    public int lateMinutes(DayCase.Trip trip) {
        if (random.nextDouble() >= late.share()) {
            return 0;
        }
        return (int) Math.ceil(-late.meanMinutes() * Math.log1p(-random.nextDouble()));
    }
}
