package depot.optimizer.replay;

/**
 * How late crews come back: most are on time, the others are late by an exponentially distributed time.
 *
 * @param share of trips that come back late, 0 to 1
 * @param meanMinutes average lateness of those
 */
public record LateReturns(double share, double meanMinutes) {

    /** One trip in four is late, by 15 minutes on average. An assumption: the tables do not say how late crews are. */
    public static final LateReturns DEFAULT = new LateReturns(0.25, 15);

    /** Everybody is on time. */
    public static final LateReturns NEVER = new LateReturns(0, 0);
}
