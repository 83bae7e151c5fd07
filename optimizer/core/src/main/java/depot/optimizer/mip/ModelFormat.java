package depot.optimizer.mip;

/**
 * File formats that any solver reads. The texts are made from the model alone, with every digit that a number has, so that the same model gives
 * the same text.
 */
public enum ModelFormat {
    /** Free MPS. */
    MPS {
        @Override
        public String write(MipModel model) {
            return new MpsText(model).write();
        }
    },
    /** LP text. */
    LP {
        @Override
        public String write(MipModel model) {
            return new LpText(model).write();
        }
    };

    /**
     * A model as text, with the names of its rows and variables as far as the format allows them.
     *
     * @throws IllegalArgumentException if a coefficient or a row's bound is not a number
     */
    public abstract String write(MipModel model);
}
