package depot.optimizer.mip;

/** File formats that any solver reads. */
public enum ModelFormat {
    /** Free MPS. */
    MPS,
    /** LP text. */
    LP;

    /** A model as text, with the names of its rows and variables. */
    public String write(MipModel model) {
        try (NativeSolver solver = new NativeSolver(Engine.BRANCH_AND_CUT, model)) {
            return solver.export(this);
        }
    }
}
