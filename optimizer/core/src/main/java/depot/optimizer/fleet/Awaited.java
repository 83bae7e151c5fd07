package depot.optimizer.fleet;

import depot.optimizer.solve.NoPlanException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;

/** Results of work that is done on other threads. */
public final class Awaited {
    private Awaited() {}

    /**
     * The result of work, or what it failed with.
     *
     * @param interrupted what to say when the wait is broken off
     * @throws NoPlanException when the wait is broken off
     */
    public static <T> T result(Future<T> future, String interrupted) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new NoPlanException(interrupted);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
