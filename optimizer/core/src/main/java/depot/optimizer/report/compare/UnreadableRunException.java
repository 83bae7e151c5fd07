package depot.optimizer.report.compare;

import java.io.IOException;

/** A run's folder that cannot be used; the message names the file, the place in it and the cause in plain words. */
public final class UnreadableRunException extends IOException {

    /** With what is wrong, in words. */
    public UnreadableRunException(String message) {
        super(message);
    }

    UnreadableRunException(String message, Throwable cause) {
        super(message, cause);
    }
}
