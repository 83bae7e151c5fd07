package depot.optimizer.fleet;

import java.util.function.BooleanSupplier;

/**
 * How a run is steered from outside.
 *
 * @param stop whether to end soon with the best plan so far; asked between solves, from several threads
 * @param answers kept from a run that was broken off, and to be kept by this one
 */
public record RunControl(BooleanSupplier stop, AnswerStore answers) {

    /** Runs to the end and keeps nothing. */
    public static final RunControl NONE = new RunControl(() -> false, AnswerStore.NONE);
}
