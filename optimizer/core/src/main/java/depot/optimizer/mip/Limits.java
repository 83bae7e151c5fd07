package depot.optimizer.mip;

/**
 * When to stop. Nodes count work and repeat; the clock does not and is a backstop.
 *
 * @param relativeGap stop when (cost - bound) / cost is at most this
 * @param absoluteGap or when cost - bound is at most this
 * @param nodes branch-and-bound nodes
 * @param seconds wall clock
 * @param seed of the engine's tie-breaking
 */
public record Limits(double relativeGap, double absoluteGap, long nodes, double seconds, int seed) {

    /** With a relative gap alone. */
    public Limits(double relativeGap, long nodes, double seconds, int seed) {
        this(relativeGap, 0, nodes, seconds, seed);
    }
}
