package depot.optimizer.cli;

/** Something that the user can put right: one line that says what, a hint that says how, and the exit status. */
final class UserError extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final ExitStatus status;
    private final String hint;

    UserError(ExitStatus status, String message, String hint) {
        this(status, message, hint, null);
    }

    UserError(ExitStatus status, String message, String hint, Throwable cause) {
        super(message, cause);
        this.status = status;
        this.hint = hint;
    }

    ExitStatus status() {
        return status;
    }

    /** What to do about it; empty when there is nothing to add to the message. */
    String hint() {
        return hint;
    }
}
