package depot.optimizer.solve;

import depot.optimizer.problem.SharedLimit;
import java.util.Map;

/**
 * A depot's linear relaxation at some prices of shared limits.
 *
 * @param bound its cost with the prices: no plan costs less, with them
 * @param cost its cost without the prices
 * @param use of the shared limits
 */
public record LinearPoint(double bound, double cost, Map<SharedLimit, Double> use) {}
