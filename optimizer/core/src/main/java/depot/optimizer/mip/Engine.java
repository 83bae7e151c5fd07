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
    /**
     * A second, independent simplex: on masters of several days two to four times as fast. Each takes over where the other has no answer. Of a single day's
     * prices at its optimum, where there are many, the first leaves more at 0, which tells apart the days that matter.
     */
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
        return this == SIMPLEX || this == SECOND_SIMPLEX;
    }

    /** Solves a model from scratch. */
    public Outcome solve(MipModel model, Limits limits) {
        Outcome outcome = solveOnce(model, limits);
        return switch (this) {
            case SIMPLEX -> gaveUp(outcome) ? SECOND_SIMPLEX.solveOnce(model, limits) : outcome;
            // It was seen to call a program infeasible that was not.
            case SECOND_SIMPLEX -> outcome.hasPoint() ? outcome : SIMPLEX.solveOnce(model, limits);
            default -> outcome;
        };
    }

    private static boolean gaveUp(Outcome outcome) {
        return outcome.stop() == Outcome.Stop.FAILED || outcome.stop() == Outcome.Stop.LIMIT_REACHED;
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
