package depot.optimizer.fleet;

import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RolloutPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the search for a fleet's plan has left behind, so that the search for a fleet that differs little can begin there: prices of shared limits, the
 * depots' bounds at these, and a pool of plans for each depot.
 *
 * <p>It is always made from a file of the form of a plan, also right after the search: whoever finds that file later begins at the very same place, and
 * neither solvers nor their cuts, which cannot be kept, have a say.
 */
public final class LeftBehind {

    /** What becomes of the plans of depots whose problem has changed. */
    public enum Touched {
        /** At the new prices they may do: a replay decides. */
        REPRICED,
        /** None of them counts. */
        LEFT_OUT
    }

    /** A depot as it was, with its plans, all of which the replay passed. */
    record OldDepot(DepotRollout rollout, List<ProvenDepot> plans) {}

    private final double cost;
    private final BoundProof proof;
    private final Map<String, OldDepot> depots;

    private LeftBehind(double cost, BoundProof proof, Map<String, OldDepot> depots) {
        this.cost = cost;
        this.proof = proof;
        this.depots = depots;
    }

    /**
     * The pool as a file: one plan of a depot after the other, each with its phases in order.
     *
     * @param found the fleet's plan, whose proof has the prices
     */
    static Plan file(Plan found, List<FleetColumn> pool) {
        List<DepotPlan> plans = new ArrayList<>();
        pool.stream()
                .filter(column -> column.proven().replayed())
                .forEach(column -> plans.addAll(column.proven().rollout().phases()));
        return new Plan(
                found.formatVersion(),
                found.scenario(),
                found.currency(),
                found.inputHashes(),
                found.solver(),
                found.settings(),
                found.certificate(),
                found.fleetCosts(),
                found.proof(),
                List.copyOf(plans));
    }

    /**
     * Reads such a file.
     *
     * @param scenario the fleet as it was
     * @param rollouts its depots
     */
    public static LeftBehind of(Scenario scenario, List<DepotRollout> rollouts, Plan file) {
        Map<String, OldDepot> depots = new HashMap<>();
        for (DepotRollout rollout : rollouts) {
            String id = rollout.depot().id();
            List<DepotPlan> all = file.depots().stream()
                    .filter(plan -> plan.depot().equals(id))
                    .toList();
            List<ProvenDepot> plans = new ArrayList<>();
            int phases = rollout.phases().size();
            for (int from = 0; from + phases <= all.size(); from += phases) {
                ProvenDepot proven = replayed(scenario, rollout, all.subList(from, from + phases));
                if (proven.replayed()) {
                    plans.add(proven);
                }
            }
            depots.put(id, new OldDepot(rollout, List.copyOf(plans)));
        }
        return new LeftBehind(file.certificate().cost(), file.proof(), depots);
    }

    /** Plans with their replays. They bound nothing. */
    static ProvenDepot replayed(Scenario scenario, DepotRollout rollout, List<DepotPlan> phases) {
        return new ProvenDepot(
                RolloutPlan.of(rollout, phases), FleetReplay.runPhases(scenario, phases), Double.NEGATIVE_INFINITY);
    }

    /** What the fleet's plan cost. */
    double cost() {
        return cost;
    }

    /** Prices, and what the depots' plans cost at least at these. */
    BoundProof proof() {
        return proof;
    }

    /** A depot as it was; empty: there was none of this name. */
    Optional<OldDepot> depot(String id) {
        return Optional.ofNullable(depots.get(id));
    }
}
