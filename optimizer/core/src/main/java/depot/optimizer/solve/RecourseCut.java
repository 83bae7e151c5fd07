package depot.optimizer.solve;

import java.util.List;

/**
 * A lower bound on what a kind of day costs, as a linear function of what is bought (an optimality cut of the L-shaped method: Van Slyke and Wets
 * 1969, from memory).
 *
 * <p>cost + sum over p of cyclePrice[p] cycles[p] &gt;= value + sum over j of slope[j] (capacity[j] - at[j]). Value and slopes are the optimum and the
 * reduced costs of the day's linear relaxation with the capacity fixed at {@code at}, charges priced at {@code cyclePrices}.
 *
 * @param day index of the kind of day
 */
record RecourseCut(int day, List<Double> cyclePrices, double value, double[] slopes, double[] at) {

    /** A slope that is smaller than this share of the value, or than this itself, is a rounding error of the simplex. */
    private static final double ROUNDING = 1e-9;

    /** The cut without slopes that are only rounding errors, which would make the master hard to solve. */
    static RecourseCut of(int day, List<Double> cyclePrices, double value, double[] slopes, double[] at) {
        double[] clean = slopes.clone();
        for (int j = 0; j < clean.length; j++) {
            if (Math.abs(clean[j]) < ROUNDING * Math.max(1, Math.abs(value))) {
                clean[j] = 0;
            }
        }
        return new RecourseCut(day, cyclePrices, value, clean, at);
    }

    /** How much of its cost the day saves by what is bought, as the slopes have it: what makes it matter to the purchases. */
    double worthOfCapacity() {
        double worth = 0;
        for (int j = 0; j < slopes.length; j++) {
            worth -= slopes[j] * at[j];
        }
        return worth;
    }
}
