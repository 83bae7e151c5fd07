package depot.optimizer.sweep;

import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether a depot's base plan holds with a loss, and what would make it hold.
 *
 * @param scenario in which the base plan has been carried out and the loss has happened
 * @param held what is left, the days planned anew; empty: no plan was found
 * @param homes of crews that it charges packs for: their days with what these still get, where that is less; empty: as they were
 * @param holds whether every day that the base plan meets is met, those of homes included
 * @param cured the least that has to be bought on top, where it does not hold; empty: it holds, or nothing was found
 * @param curedCost what the cure costs over the horizon more than the base plan with nothing lost
 * @param noPlan why there is no cure, empty: there is one or none is needed
 */
public record LossResult(
        Loss loss,
        Scenario scenario,
        Optional<DepotOutcome> held,
        List<DepotOutcome> homes,
        boolean holds,
        Optional<DepotOutcome> cured,
        double curedCost,
        String noPlan) {

    /** Copies the list. */
    public LossResult {
        homes = List.copyOf(homes);
    }

    /** Where the base plan holds. */
    static LossResult holding(Loss loss, Scenario scenario, DepotOutcome held, List<DepotOutcome> homes) {
        return new LossResult(loss, scenario, Optional.of(held), homes, true, Optional.empty(), 0, "");
    }

    /** Every outcome of what is left: that of the depot, and those of homes. */
    public List<DepotOutcome> left() {
        return Stream.concat(held.stream(), homes.stream()).toList();
    }
}
