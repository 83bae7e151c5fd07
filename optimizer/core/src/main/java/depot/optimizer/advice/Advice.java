package depot.optimizer.advice;

import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;

/**
 * Everything that was asked about a plan.
 *
 * @param scenario with the settings that depots were solved with
 * @param plan asked about
 * @param depots those asked for, in the plan's order
 * @param fleet what there is to say about the fleet as a whole, empty: its depots share nothing and there is one phase
 */
public record Advice(
        Scenario scenario, Plan plan, AdviceSettings settings, List<DepotAdvice> depots, Optional<FleetAdvice> fleet) {}
