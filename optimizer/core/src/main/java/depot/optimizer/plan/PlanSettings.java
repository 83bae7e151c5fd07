package depot.optimizer.plan;

/** The settings that a plan was solved with; see {@code SolveSettings} for their meaning. */
public record PlanSettings(double relativeGap, long nodeLimit, int threads, int seed, int handoverMinutes) {}
