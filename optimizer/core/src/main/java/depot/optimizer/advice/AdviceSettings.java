package depot.optimizer.advice;

import depot.optimizer.advice.thumb.ThumbSettings;
import java.util.Set;

/**
 * What is asked about a plan.
 *
 * @param parts which questions
 * @param thumb what a planner without a model goes by
 * @param within share of the plan's cost by which another plan may cost more to be next best, 0 or more
 */
public record AdviceSettings(Set<Part> parts, ThumbSettings thumb, double within) {

    /** Another plan that costs up to a tenth more is worth a look. */
    public static final double USUAL_WITHIN = 0.1;

    /** The questions. */
    public enum Part {
        /** How does it compare with what is usual without a model? */
        THUMB,
        /** Why is each thing bought? */
        WHY,
        /** What would more room be worth? */
        WORTH,
        /** What else would nearly do? */
        NEXT
    }

    /** Whether a question is asked. */
    public boolean asks(Part part) {
        return parts.contains(part);
    }
}
