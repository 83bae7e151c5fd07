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
 */
public record FleetAdvice(
        Certificate certificate, List<LimitUse> limits, Optional<Plan> thumb, List<Violation> together) {

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
     */
    public record LimitUse(String limit, Measure measure, double most, double used, Optional<Double> price) {

        /** What is left of it. */
        public double left() {
            return most - used;
        }
    }

    /** What a limit counts. */
    public enum Measure {
        /** The currency. */
        MONEY,
        /** Pieces of an item. */
        PIECES
    }
}
