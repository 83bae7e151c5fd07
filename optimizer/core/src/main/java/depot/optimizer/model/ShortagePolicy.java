package depot.optimizer.model;

/** Whether a day may fall short. */
public enum ShortagePolicy {
    /** Energy may be left uncovered at its price. */
    ALLOW,
    /** Every trip's need is covered. */
    REFUSE,
    /** As {@link #ALLOW}, and guests' packs may be turned away: there is always a point. For cuts, never for plans. */
    RELAX
}
