package depot.optimizer.mip;

/** A variable of a {@link MipModel}: its place in the model and its unique name. */
public record Var(int index, String name) {}
