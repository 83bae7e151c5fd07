package depot.optimizer.replay;

/** What a load-sharing unit does with energy that it was to draw in a slice and did not. */
enum Pacing {
    /** The proof: only what rounding to whole chargers and the taper leave over passes on. */
    AS_PLANNED(5),
    /** Trials: whatever was not drawn, because packs came late, is drawn as soon as there is room. */
    CATCH_UP(BaseLoads.DAY);

    private final double carryMinutes;

    Pacing(double carryMinutes) {
        this.carryMinutes = carryMinutes;
    }

    /** Most that passes on to the next slice, in minutes of the unit's full draw. */
    double carryMinutes() {
        return carryMinutes;
    }
}
