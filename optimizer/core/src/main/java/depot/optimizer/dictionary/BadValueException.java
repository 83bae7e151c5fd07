package depot.optimizer.dictionary;

/** A text that is not a value of its type. Its message says what is wrong, its hint what to write instead. */
public final class BadValueException extends Exception {
    private static final long serialVersionUID = 1;

    private final String hint;

    /** Without a stack trace: it is an answer, not a failure of the program. */
    BadValueException(String message, String hint) {
        super(message, null, false, false);
        this.hint = hint;
    }

    /** What to write instead. */
    public String hint() {
        return hint;
    }
}
