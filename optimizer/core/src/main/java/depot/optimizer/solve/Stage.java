package depot.optimizer.solve;

/** How the master takes its binding days. */
enum Stage {
    /** Packs loaded may be fractions: quick, and a good guide to what to buy. */
    EXPLORING,
    /** All in whole numbers. */
    EXACT
}
