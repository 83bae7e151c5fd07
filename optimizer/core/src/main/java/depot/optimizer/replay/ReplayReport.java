package depot.optimizer.replay;

import java.util.List;
import java.util.stream.Stream;

/**
 * The proof of a fleet's plan, depot by depot in the plan's order.
 *
 * @param fleet rules that the depots break together
 */
public record ReplayReport(List<DepotReplay> depots, List<Violation> fleet) {

    /** Of depots that share nothing. */
    public ReplayReport(List<DepotReplay> depots) {
        this(depots, List.of());
    }

    /** Whether every depot and the fleet as a whole are proven. */
    public boolean proven() {
        return fleet.isEmpty() && depots.stream().allMatch(DepotReplay::proven);
    }

    /** Every violation: those of the fleet, then those of the depots in their order. */
    public List<Violation> violations() {
        return Stream.concat(fleet.stream(), depots.stream().flatMap(d -> d.allViolations().stream()))
                .toList();
    }
}
