package depot.optimizer.solve;

/** No purchases meet every need, and shortage is forbidden. */
final class NeedsCannotBeMetException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    NeedsCannotBeMetException(String depot) {
        super("no purchases meet every need of depot " + depot);
    }
}
