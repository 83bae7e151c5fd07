package depot.optimizer.advice;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What came of solving a depot again with something changed.
 *
 * @param plan found and replayed, empty: none within the limits
 * @param difference from the plan asked about, empty: there is none to tell, see {@link #ending}
 * @param trouble why there is no plan, or the first rule that its replay finds broken; empty: none
 */
public record Answer(Ending ending, Optional<ReplayedPlan> plan, Optional<Difference> difference, String trouble) {

    /** How it ended. */
    public enum Ending {
        /** Every day is met. */
        MET,
        /** Some days fall short as before, at the price of shortage or because none may. */
        SHORT,
        /** No plan meets every day, though the plan asked about does. */
        IMPOSSIBLE,
        /** No plan was found within the limits. */
        NO_PLAN,
        /** No plan was found while the other depots of the fleet go on as they are. */
        NONE_WITH_OTHERS_HELD,
        /** A plan was found that its replay does not agree with. */
        UNPROVEN
    }

    /**
     * How a plan that was found ends a question.
     *
     * @param shortageForbidden whether the price of shortage is only a penalty, that cannot be set against others
     */
    static Ending ending(ReplayedPlan found, boolean shortageForbidden) {
        if (!found.proven()) {
            return Ending.UNPROVEN;
        }
        if (found.covered()) {
            return Ending.MET;
        }
        return shortageForbidden ? Ending.IMPOSSIBLE : Ending.SHORT;
    }

    /** The first rule that a plan breaks; empty: none. */
    static String trouble(ReplayedPlan found) {
        return found.proven() ? "" : found.trouble().orElse("the replay does not agree with the cost");
    }

    /** Energy not covered in a year, empty: all is covered, or there is no plan. */
    public OptionalDouble shortKwhPerYear() {
        return plan.filter(found -> !found.covered())
                .map(found -> OptionalDouble.of(found.shortKwhPerYear()))
                .orElse(OptionalDouble.empty());
    }
}
