package depot.optimizer.fleet;

import depot.optimizer.problem.SharedLimit;
import java.util.Map;

/**
 * What a depot may contribute to the fleet: what it costs and what it uses of the shared limits.
 *
 * @param depot place of the depot
 * @param proven the plans behind it; null for a point of the linear relaxation
 */
record FleetColumn(int depot, double cost, Map<SharedLimit, Double> use, ProvenDepot proven) {

    double use(SharedLimit limit) {
        return use.getOrDefault(limit, 0.0);
    }
}
