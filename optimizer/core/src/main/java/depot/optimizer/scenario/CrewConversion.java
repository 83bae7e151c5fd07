package depot.optimizer.scenario;

import java.util.Optional;

/**
 * When a crew may change from petrol to packs. Before that it pays its {@link Crew#petrolCostPerYear()}.
 *
 * @param earliestPhase id of the first phase in which it may change
 * @param latestPhase id of the last phase in which it may change, not before the earliest; empty: it may stay on petrol
 *     for good
 */
public record CrewConversion(String crew, String earliestPhase, Optional<String> latestPhase) {}
