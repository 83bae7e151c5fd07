package depot.optimizer.replay;

import java.util.List;

/** The proof of a fleet's plan, depot by depot in the plan's order. */
public record ReplayReport(List<DepotReplay> depots) {

    /** Whether every depot is proven. */
    public boolean proven() {
        return depots.stream().allMatch(DepotReplay::proven);
    }

    /** Every violation, in the order of the depots. */
    public List<Violation> violations() {
        return depots.stream().flatMap(d -> d.allViolations().stream()).toList();
    }
}
