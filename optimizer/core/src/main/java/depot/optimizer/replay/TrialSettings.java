package depot.optimizer.replay;

/**
 * What a trial run is asked for.
 *
 * @param trials days drawn for each depot, at least 1
 * @param seed the same seed gives the same days
 * @param late how late crews come back
 */
public record TrialSettings(int trials, long seed, LateReturns late) {
    /** Refuses a run without trials. */
    public TrialSettings {
        if (trials < 1) {
            throw new IllegalArgumentException("a trial run needs at least 1 trial, not " + trials);
        }
    }
}
