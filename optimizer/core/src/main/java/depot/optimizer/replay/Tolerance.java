package depot.optimizer.replay;

/** How much a measured value may pass its limit before that counts: room for floating-point noise and solver feasibility only. */
final class Tolerance {
    /** Relative, for currents and powers. */
    static final double CURRENT = 1e-6;

    /** Watt-hours that a trip may lack, beside {@link #ENERGY_SHARE}. */
    static final double ENERGY_WH = 0.01;

    /** Share of its need that a trip may lack. */
    static final double ENERGY_SHARE = 1e-6;

    /** Kilograms, packs or places. */
    static final double COUNT = 1e-6;

    private Tolerance() {}

    static boolean above(double measured, double limit) {
        return measured > limit + Math.abs(limit) * CURRENT + 1e-9;
    }
}
