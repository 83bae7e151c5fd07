package depot.optimizer.cli;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.report.text.Figures;
import depot.optimizer.rerun.DepotChange;
import depot.optimizer.rerun.RerunResult;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Where tables and earlier run may tell the same thing twice, or not the same thing. */
final class RerunRemarks {
    private RerunRemarks() {}

    /** A line for each of them. */
    static List<String> of(RerunResult result) {
        List<String> remarks = new ArrayList<>();
        for (DepotChange change : result.changes()) {
            if (result.shared().isEmpty()) {
                remarks.addAll(twice(result, change));
            }
            supply(result, change).ifPresent(remarks::add);
        }
        result.shared().filter(shared -> !shared.kept()).ifPresent(shared -> remarks.addAll(spares(result)));
        return List.copyOf(remarks);
    }

    /** Pieces that were bought to reach a quantity price are with no depot. */
    private static List<String> spares(RerunResult result) {
        return result.earlier().plan().fleetCosts().stream()
                .filter(cost -> cost.kind() == FleetCost.Kind.SPARE_PIECES
                        && result.earlier().phasesCarriedOut().contains(cost.phase()))
                .map(cost ->
                        ("The run bought %d %s in %s only to reach a quantity price. They are with no depot and are not "
                                        + "counted: write them into owned.csv where they are.")
                                .formatted(cost.pieces(), cost.item(), cost.phase()))
                .toList();
    }

    /** More in owned.csv than before, of something that the run bought: maybe the same pieces. */
    private static List<String> twice(RerunResult result, DepotChange change) {
        SortedMap<String, Integer> then = owned(result.earlier().scenario(), change.depot());
        SortedMap<String, Integer> now = owned(result.scenario(), change.depot());
        List<String> remarks = new ArrayList<>();
        change.held().forEach((item, held) -> {
            int listed = now.getOrDefault(item, 0);
            int more = listed - then.getOrDefault(item, 0);
            int bought = held - listed;
            if (more > 0 && bought > 0) {
                remarks.add(
                        ("owned.csv lists %d more %s at %s than when the run was made, and the %s that runs bought count "
                                        + "as well. Leave pieces that a run bought out of owned.csv.")
                                .formatted(more, item, change.depot(), Figures.count(bought, "piece")));
            }
        });
        return remarks;
    }

    private static SortedMap<String, Integer> owned(Scenario scenario, String depot) {
        SortedMap<String, Integer> counts = new TreeMap<>();
        for (Owned row : scenario.owned()) {
            if (row.depot().equals(depot)) {
                counts.merge(row.item(), row.count(), Integer::sum);
            }
        }
        return counts;
    }

    /** A bigger supply that was bought and that the tables say nothing of any more. */
    private static Optional<String> supply(RerunResult result, DepotChange change) {
        boolean bought = change.before().filter(DepotPlan::supplyUpgraded).isPresent();
        Optional<Depot> then = depot(result.earlier().scenario(), change.depot());
        Optional<Depot> now = depot(result.scenario(), change.depot());
        boolean lost = bought
                && !change.supplyUpgraded()
                && then.isPresent()
                && now.isPresent()
                && now.get().supplyAmps() < then.get().supplyUpgradeAmps();
        return lost
                ? Optional.of(
                        "The run bought a supply of %s A for %s; depots.csv says %s A and does not offer that one."
                                .formatted(
                                        Figures.plain(then.get().supplyUpgradeAmps(), 1),
                                        change.depot(),
                                        Figures.plain(now.get().supplyAmps(), 1)))
                : Optional.empty();
    }

    private static Optional<Depot> depot(Scenario scenario, String id) {
        return scenario.depots().stream().filter(depot -> depot.id().equals(id)).findFirst();
    }
}
