package depot.optimizer.cli;

import java.util.function.LongSupplier;

/** Says how much longer work may take, going by how long it has taken so far. */
final class TimeLeft {

    private static final double NANOS_PER_SECOND = 1e9;
    private static final long MINUTE = 60;
    private static final long HOUR = 60 * MINUTE;

    private final LongSupplier nanoTime;
    private final long start;

    /** Starts now. */
    TimeLeft(LongSupplier nanoTime) {
        this.nanoTime = nanoTime;
        this.start = nanoTime.getAsLong();
    }

    /** Such as "about 3 min left". */
    String words(int done, int total) {
        double elapsed = (nanoTime.getAsLong() - start) / NANOS_PER_SECOND;
        long seconds = Math.round(elapsed / Math.max(1, done) * (total - done));
        if (seconds < 2 * MINUTE) {
            return "about %d s left".formatted(seconds);
        }
        return seconds < 2 * HOUR
                ? "about %d min left".formatted(Math.round(seconds / (double) MINUTE))
                : "about %d h left".formatted(Math.round(seconds / (double) HOUR));
    }
}
