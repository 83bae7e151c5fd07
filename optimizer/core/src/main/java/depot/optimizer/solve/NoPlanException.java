package depot.optimizer.solve;

/** No plan was found within the limits. */
public class NoPlanException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** With a message that names the depot and says why. */
    public NoPlanException(String message) {
        super(message);
    }
}
