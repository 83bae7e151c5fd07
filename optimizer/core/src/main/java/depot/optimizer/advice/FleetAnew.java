package depot.optimizer.advice;

import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetResult;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.Violation;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.FleetAssembly;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fleet of a plan that was made as one model, planned anew as one model with more room somewhere. Such a plan has no prices that would say what room
 * at one depot is worth to all; the bound of the new model does, and what it finds is a plan of the fleet.
 */
final class FleetAnew {

    private final FleetResult result;

    private FleetAnew(FleetResult result) {
        this.result = result;
    }

    /**
     * Whether a plan was made as one model of depots that share something: its searches are then one and the same. Others without prices, such as those
     * put together from plans of single depots, may be of fleets that are too big for one model.
     */
    static boolean asks(Scenario scenario, Plan plan) {
        long searches = plan.depots().stream()
                .map(DepotPlan::stop)
                .map(stop -> List.of((long) stop.variables(), (long) stop.constraints(), stop.nodes()))
                .distinct()
                .count();
        return !plan.proof().given()
                && searches == 1
                && !SharedLimits.of(scenario).isEmpty();
    }

    /**
     * With more room at one depot, and the others as they are.
     *
     * @param changed gives that room, and may give it to others, who do not get it
     * @param assembly of the scenario as it is
     * @param easier the depot with more room
     * @throws NoPlanException if none is found within the limits
     */
    static FleetAnew of(Scenario changed, FleetAssembly assembly, DepotRollout easier) {
        List<DepotRollout> rollouts = new ArrayList<>();
        for (Depot depot : changed.depots()) {
            rollouts.add(depot.id().equals(easier.depot().id()) ? easier : assembly.rollout(depot.id()));
        }
        return new FleetAnew(new FleetPlanner(ProgressListener.SILENT).planAsOne(changed, rollouts));
    }

    /**
     * What more of a shared limit is worth.
     *
     * @param fleet the plan asked about
     * @param changed with the limit loosened
     */
    static Answer worth(Plan fleet, Scenario changed, boolean shortageForbidden) {
        FleetAssembly assembly = new FleetAssembly(changed);
        try {
            FleetAnew found = of(
                    changed, assembly, assembly.rollout(changed.depots().get(0).id()));
            ReplayedPlan plan = found.whole();
            Answer.Ending ending = Answer.ending(plan, shortageForbidden);
            boolean comparable = ending == Answer.Ending.MET || ending == Answer.Ending.SHORT;
            return new Answer(
                    ending,
                    Optional.of(plan),
                    comparable
                            ? Optional.of(Difference.easier(fleet.certificate(), found.certificate()))
                            : Optional.empty(),
                    Answer.trouble(plan));
        } catch (NoPlanException e) {
            return new Answer(Answer.Ending.NO_PLAN, Optional.empty(), Optional.empty(), e.getMessage());
        }
    }

    /** Cost of the fleet, and what no plan of it can cost less than. */
    Certificate certificate() {
        return result.plan().certificate();
    }

    /** One depot in it; rules that others break count against it. */
    ReplayedPlan seenFrom(String depot) {
        List<DepotPlan> plans = new ArrayList<>();
        List<DepotReplay> replays = new ArrayList<>();
        List<Violation> together = new ArrayList<>(result.replay().fleet());
        for (int i = 0; i < result.plan().depots().size(); i++) {
            DepotReplay replay = result.replay().depots().get(i);
            if (result.plan().depots().get(i).depot().equals(depot)) {
                plans.add(result.plan().depots().get(i));
                replays.add(replay);
            } else {
                together.addAll(replay.allViolations());
            }
        }
        return new ReplayedPlan(plans, replays, Optional.of(result.plan()), together);
    }

    /** All depots. */
    private ReplayedPlan whole() {
        return new ReplayedPlan(
                result.plan().depots(),
                result.replay().depots(),
                Optional.of(result.plan()),
                result.replay().fleet());
    }
}
