package depot.optimizer.mip;

/** Something that solves a {@link MipModel}. */
public enum Engine {
    /** Branch and cut; the one for plans: its limits, its gap and its bound can be relied on. */
    BRANCH_AND_CUT("SCIP"),
    /** A second, independent branch and cut, for cross-checks. */
    SECOND_BRANCH_AND_CUT("CBC"),
    /** Simplex; whole numbers are relaxed. */
    SIMPLEX("GLOP");

    private final String engineId;

    Engine(String engineId) {
        this.engineId = engineId;
    }

    String engineId() {
        return engineId;
    }

    /** Solves a model from scratch. */
    public Outcome solve(MipModel model, Limits limits) {
        try (NativeSolver solver = new NativeSolver(this, model)) {
            return solver.solve(limits);
        }
    }

    /** Name and version of the library that the engines come with. */
    public static String libraryVersion() {
        return NativeSolver.version();
    }
}
