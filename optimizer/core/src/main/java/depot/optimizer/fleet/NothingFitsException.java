package depot.optimizer.fleet;

/** No plan keeps what the depots share. The message says which limit is too small, and what would do. */
public final class NothingFitsException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** With the message for the user. */
    public NothingFitsException(String message) {
        super(message);
    }
}
