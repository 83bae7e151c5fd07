package depot.optimizer.plan;

/**
 * Energy that chargers behind a circuit's load-sharing unit may draw in a slice for loads that stay until the end of the cycle; 0: they wait. What
 * could not be drawn in its slice may be drawn later. Loads that are collected earlier do not count: they sit on priority outlets and never wait.
 *
 * @param wattHours drawn from the circuit between the two times
 */
public record UnitFeed(String circuit, int fromMinute, int toMinute, double wattHours) {}
