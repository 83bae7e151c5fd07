package depot.optimizer.plan;

/**
 * Owned pieces that change depots when a phase begins.
 *
 * @param item id of their type
 * @param count above 0: they come, below 0: they go
 */
public record MovedPieces(String item, int count) {}
