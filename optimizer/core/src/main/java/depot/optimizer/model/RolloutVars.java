package depot.optimizer.model;

import java.util.List;

/**
 * What is bought over all phases.
 *
 * @param phases what is there in each
 * @param use what the purchases use of what the fleet shares
 */
public record RolloutVars(List<CapacityVars> phases, RolloutUse use) {}
