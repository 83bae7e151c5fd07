package depot.optimizer.fleet;

import depot.optimizer.problem.SharedLimit;
import java.util.List;

/** No plan keeps what the depots share. The message says which limit is too small, and what would do. */
public final class NothingFitsException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<TooSmall> tooSmall;

    /**
     * A budget by which no plan can be paid for.
     *
     * @param least that would do, other limits aside
     */
    public record TooSmall(SharedLimit budget, double least) {}

    /** With the message for the user. */
    public NothingFitsException(String message) {
        this(message, List.of());
    }

    /** The same with the budgets that are too small. */
    public NothingFitsException(String message, List<TooSmall> tooSmall) {
        super(message);
        this.tooSmall = List.copyOf(tooSmall);
    }

    /** Budgets that are too small, each by itself; empty: none of them is, or it is not known. */
    public List<TooSmall> tooSmall() {
        return tooSmall;
    }
}
