package depot.optimizer.plan;

/**
 * Energy that the chargers behind a circuit's load-sharing unit may draw in a slice, evenly over the slice; 0: the unit waits.
 *
 * @param wattHours drawn from the circuit between the two times
 */
public record UnitFeed(String circuit, int fromMinute, int toMinute, double wattHours) {}
