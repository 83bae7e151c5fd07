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
record RecourseCut(int day, List<Double> cyclePrices, double value, double[] slopes, double[] at) {}
