package depot.optimizer.report;

import java.io.IOException;

/** A run that could not be written; the message names the folder and the cause, and says what is left on the disk. */
public final class UnwritableRunException extends IOException {

    UnwritableRunException(String message) {
        super(message);
    }

    UnwritableRunException(String message, Throwable cause) {
        super(message, cause);
    }
}
