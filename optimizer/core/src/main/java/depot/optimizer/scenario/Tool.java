package depot.optimizer.scenario;

import java.util.OptionalDouble;

/**
 * A cordless tool.
 *
 * @param family pack family that fits it
 * @param averageWatts drawn from the pack while it runs
 * @param petrolLitresPerHour what the petrol tool that it replaces burns
 */
public record Tool(String id, String family, double averageWatts, OptionalDouble petrolLitresPerHour) {}
