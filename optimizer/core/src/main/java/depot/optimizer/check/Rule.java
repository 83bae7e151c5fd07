package depot.optimizer.check;

/** A rule of a scenario. */
@FunctionalInterface
interface Rule {
    /** Reports every breach of the rule. */
    void check(Drafts drafts, Findings findings);
}
