package depot.optimizer.solve;

import java.util.Comparator;

/**
 * A day outside the master that costs more than the master took it to cost.
 *
 * @param day index of the kind of day
 * @param amount by how much, present cost
 */
record Miss(int day, double amount) {

    static final Comparator<Miss> WORST_FIRST =
            Comparator.comparingDouble(Miss::amount).reversed().thenComparingInt(Miss::day);
}
