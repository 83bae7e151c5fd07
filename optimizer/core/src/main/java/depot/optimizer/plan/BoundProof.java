package depot.optimizer.plan;

import java.util.List;

/**
 * What the bound of a fleet is made of whose depots share limits. With a price of at least 0 on each limit that holds from above (of any sign on one
 * that is an equation), no plan costs less than
 *
 * <p>sum of the depots' bounds - sum over limits of price * limit
 *
 * <p>(Lagrangian relaxation), where a depot's bound is the least that its plans cost when they also pay the prices for what they use. A limit of pieces
 * that count towards a quantity price is used negatively, and its price is at least what any tier takes off a piece.
 *
 * @param limits with their prices
 * @param depots with their bounds at these prices
 * @param oneModel whether one model of all depots has proven a higher bound than these parts; that one is the certificate's, and has no parts
 */
public record BoundProof(List<PricedLimit> limits, List<DepotBound> depots, boolean oneModel) {

    /** Nothing is shared: the fleet's bound is the sum of the depots' own. */
    public static final BoundProof NONE = new BoundProof(List.of(), List.of(), false);

    /** Whether something is shared. */
    public boolean given() {
        return !limits.isEmpty();
    }

    /** What the parts come to. */
    public double bound() {
        return depots.stream().mapToDouble(DepotBound::bound).sum()
                - limits.stream()
                        .mapToDouble(limit -> limit.price() * limit.most())
                        .sum();
    }

    /**
     * A shared limit.
     *
     * @param limit its name, such as "budget phase-1"
     * @param equation whether all of it must be used
     * @param most what the depots may use of it together
     * @param price of one unit
     */
    public record PricedLimit(String limit, boolean equation, double most, double price) {}

    /** Least that a depot's plans cost when they also pay the prices; below 0 where prices reward. */
    public record DepotBound(String depot, double bound) {}
}
