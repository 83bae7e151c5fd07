package depot.optimizer.report;

import java.io.IOException;

/** A plan file that cannot be used; the message names the file, the place in it and the cause in plain words. */
public final class UnreadablePlanException extends IOException {

    UnreadablePlanException(String message, Throwable cause) {
        super(message, cause);
    }
}
