package depot.optimizer.solve;

/** How the master takes its binding days. */
enum Stage {
    /** Loads may be fractions: quick, and a good guide to what to buy. */
    EXPLORING,
    /** All in whole numbers. */
    EXACT,
    /** All in whole numbers, with little more than what an earlier plan buys; proves nothing. */
    REPAIRING
}
