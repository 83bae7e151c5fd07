package depot.optimizer.scenario;

/**
 * How hard to look for a plan. Limits count work, so that a run repeats; the clock is a backstop only.
 *
 * @param relativeGap gap between cost and proven bound at which a depot's solve may stop, 0 to 1
 * @param nodeLimit branch-and-bound nodes per solve
 * @param timeLimitSeconds wall-clock backstop per depot
 * @param threads depots solved side by side
 * @param seed seed of the solver's tie-breaking and of every random draw
 * @param handoverMinutes handovers are rounded outward to a multiple of this
 */
public record SolveSettings(
        double relativeGap, long nodeLimit, double timeLimitSeconds, int threads, int seed, int handoverMinutes) {

    /** 0.5 % gap, 20,000 nodes, 120 s, two threads, seed 1, quarter-hour handovers. */
    public static final SolveSettings DEFAULT = new SolveSettings(0.005, 20_000, 120, 2, 1, 15);
}
