package depot.optimizer.sweep;

import depot.optimizer.scenario.Scenario;
import java.util.Optional;

/**
 * Whether a depot's base plan holds with a loss, and what would make it hold.
 *
 * @param scenario in which the base plan has been carried out and the loss has happened
 * @param held what is left, the days planned anew; empty: no plan was found
 * @param holds whether every day that the base plan meets is met
 * @param cured the least that has to be bought on top, where it does not hold; empty: it holds, or nothing was found
 * @param curedCost what the cure costs over the horizon more than the base plan with nothing lost
 * @param noPlan why there is no cure, empty: there is one or none is needed
 */
public record LossResult(
        Loss loss,
        Scenario scenario,
        Optional<DepotOutcome> held,
        boolean holds,
        Optional<DepotOutcome> cured,
        double curedCost,
        String noPlan) {}
