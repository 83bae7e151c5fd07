package depot.optimizer.mip;

/** Something that solves a {@link MipModel}. */
public enum Engine {
    /** Branch and cut; the one for plans: its limits, its gap and its bound can be relied on. */
    BRANCH_AND_CUT("SCIP"),
    /**
     * The same, but it tries variables before it branches on one (reliability branching). That takes far fewer nodes, each of them dearer, where rows join
     * parts that hardly feel each other: for models of several depots.
     */
    TRIED_BRANCH_AND_CUT("SCIP"),
    /** A second, independent branch and cut, for cross-checks. */
    SECOND_BRANCH_AND_CUT("CBC"),
    /** Simplex; whole numbers are relaxed. */
    SIMPLEX("GLOP"),
    /** The same by the dual method: twice as fast where many days stand in one model, slower on some days by themselves. */
    DUAL_SIMPLEX("GLOP"),
    /** A second, independent simplex, which takes over where the first gives up. */
    SECOND_SIMPLEX("CLP");

    private final String engineId;

    Engine(String engineId) {
        this.engineId = engineId;
    }

    String engineId() {
        return engineId;
    }

    /** Whether it branches by what was inferred and not by what was tried. */
    boolean infers() {
        return this == BRANCH_AND_CUT;
    }

    /** Whether it takes limits of nodes and a seed. */
    boolean limitsNodes() {
        return this == BRANCH_AND_CUT || this == TRIED_BRANCH_AND_CUT;
    }

    /** Whether whole numbers are relaxed and there are reduced costs. */
    boolean linear() {
        return this == SIMPLEX || this == DUAL_SIMPLEX || this == SECOND_SIMPLEX;
    }

    /** Solves a model from scratch. */
    public Outcome solve(MipModel model, Limits limits) {
        Outcome outcome = solveOnce(model, limits);
        boolean given = outcome.stop() == Outcome.Stop.FAILED || outcome.stop() == Outcome.Stop.LIMIT_REACHED;
        return (this == SIMPLEX || this == DUAL_SIMPLEX) && given ? SECOND_SIMPLEX.solveOnce(model, limits) : outcome;
    }

    private Outcome solveOnce(MipModel model, Limits limits) {
        try (NativeSolver solver = new NativeSolver(this, model)) {
            return solver.solve(limits);
        }
    }

    /** Name and version of the library that the engines come with. */
    public static String libraryVersion() {
        return NativeSolver.version();
    }
}
