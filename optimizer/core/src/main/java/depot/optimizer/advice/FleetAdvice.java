package depot.optimizer.advice;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.Violation;
import java.util.List;
import java.util.Optional;

/**
 * What there is to say about a fleet whose depots share limits, or that has several phases.
 *
 * @param certificate of the whole plan
 * @param limits what the depots share; empty: nothing
 * @param thumb the fleet with the depots asked about by rules of thumb, each crew in the first phase in which it may change; empty: not asked for
 * @param together rules that this plan breaks as a whole
 * @param plannedAnew whether what room is worth was asked of the whole fleet, planned anew; else the other depots were held
 */
public record FleetAdvice(
        Certificate certificate,
        List<LimitUse> limits,
        Optional<Plan> thumb,
        List<Violation> together,
        boolean plannedAnew) {

    /** Copies the lists. */
    public FleetAdvice {
        limits = List.copyOf(limits);
        together = List.copyOf(together);
    }

    /**
     * A shared limit in the plan.
     *
     * @param limit its name, such as "budget first"
     * @param most that may be used of it
     * @param used by all depots, and beside them by spare pieces and quantity prices
     * @param price one unit more of the limit saves at most this, beyond what the gap leaves open, by the plan's certificate; empty: the plan has none
     * @param more what a little more of it is worth, where the plan has no prices; empty: it has, or that was not asked
     */
    public record LimitUse(
            String limit, Measure measure, double most, double used, Optional<Double> price, Optional<More> more) {

        /** What is left of it. */
        public double left() {
            return most - used;
        }
    }

    /**
     * More of a limit.
     *
     * @param step how much more
     * @param answer of the whole fleet, planned anew with it
     */
    public record More(double step, Answer answer) {}

    /** What a limit counts. */
    public enum Measure {
        /** The currency. */
        MONEY,
        /** Pieces of an item. */
        PIECES
    }
}
