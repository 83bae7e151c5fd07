package depot.optimizer.problem;

/** How far a pack is charged before it is taken. */
public enum ChargeLevel {
    /** To the end of the fast stage: 80 % of the energy. */
    EIGHTY(0.8),
    /** To the full. */
    FULL(1.0);

    private final double share;

    ChargeLevel(double share) {
        this.share = share;
    }

    /** Share of the pack's energy. */
    public double share() {
        return share;
    }
}
