package depot.optimizer.plan;

/** A load-sharing unit on a circuit, which then feeds nothing else. */
public record UnitPlacement(String circuit, String unitType, boolean owned) {}
