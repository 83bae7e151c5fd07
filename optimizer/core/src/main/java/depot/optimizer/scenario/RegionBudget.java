package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * What the depots of a region may spend in a phase, beside the fleet's own limit.
 *
 * @param phase id of the phase
 * @param region as the depots name it
 * @param budget capital that all depots of the region together may spend in the phase
 */
public record RegionBudget(String phase, String region, BigDecimal budget) {}
