package depot.optimizer.fleet;

import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.fleet.OpenDepots.Aim;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Plans the depots of a fleet, several at a time: apart where nothing couples them, together where something does. */
public final class FleetPlanner {

    private static final Certificate NO_OTHERS = Certificate.of(0, 0, 0);

    private final ProgressListener progress;
    private final RunControl control;

    /** A planner that tells a listener how far it is. */
    public FleetPlanner(ProgressListener progress) {
        this(progress, RunControl.NONE);
    }

    /** A planner that can be stopped, and that keeps what it has worked out. */
    public FleetPlanner(ProgressListener progress, RunControl control) {
        this.progress = progress;
        this.control = control;
    }

    /**
     * Plans, replays and explains.
     *
     * @param inputHashes goes into the plan as it is
     * @throws NoPlanException when a depot has no plan within the limits, or the fleet none within what it shares
     */
    public FleetResult plan(Scenario scenario, SortedMap<String, String> inputHashes) {
        return plan(scenario, inputHashes, Method.APART);
    }

    /** How a fleet is planned. */
    public enum Method {
        /** Depots apart, by prices of what they share. */
        APART,
        /** All depots in one model. */
        WHOLE
    }

    /**
     * The same by a given method.
     *
     * @throws NoPlanException when a depot has no plan within the limits, or the fleet none within what it shares
     */
    public FleetResult plan(Scenario scenario, SortedMap<String, String> inputHashes, Method method) {
        List<DepotRollout> rollouts = rollouts(scenario);
        FleetPlan fleet;
        if (method == Method.WHOLE) {
            fleet = WholeMethod.solve(scenario, rollouts);
        } else if (SharedLimits.of(scenario).isEmpty()) {
            fleet = apart(scenario, rollouts, NO_OTHERS, Aim.SUM);
        } else {
            fleet = shared(scenario, rollouts, Optional.empty(), Touched.LEFT_OUT)
                    .solve();
        }
        return fleet.result(scenario, inputHashes, rollouts);
    }

    private SharedFleet shared(
            Scenario scenario, List<DepotRollout> rollouts, Optional<LeftBehind> left, Touched touched) {
        return new SharedFleet(scenario, rollouts, progress, control, left, touched);
    }

    /**
     * A plan, and what its search leaves for the next one.
     *
     * @param left a file for {@link LeftBehind#of}; empty where depots share nothing
     */
    public record Leaving(FleetResult result, Optional<Plan> left) {}

    /**
     * Plans, and says what the search leaves behind.
     *
     * @throws NoPlanException when a depot has no plan within the limits, or the fleet none within what it shares
     */
    public Leaving planLeaving(Scenario scenario, SortedMap<String, String> inputHashes) {
        if (SharedLimits.of(scenario).isEmpty()) {
            return new Leaving(plan(scenario, inputHashes), Optional.empty());
        }
        List<DepotRollout> rollouts = rollouts(scenario);
        SharedFleet fleet = shared(scenario, rollouts, Optional.empty(), Touched.LEFT_OUT);
        FleetResult result = fleet.solve().result(scenario, inputHashes, rollouts);
        return new Leaving(result, Optional.of(LeftBehind.file(result.plan(), fleet.pool())));
    }

    /**
     * Plans a fleet, beginning with what the search for a similar one has left behind. Where depots share nothing that is of no use, and nothing is made of
     * it.
     *
     * @param touched what becomes of plans of depots whose problem has changed
     * @throws NoPlanException when a depot has no plan within the limits, or the fleet none within what it shares
     */
    public FleetResult planFrom(
            LeftBehind left, Touched touched, Scenario scenario, SortedMap<String, String> inputHashes) {
        if (SharedLimits.of(scenario).isEmpty()) {
            return plan(scenario, inputHashes);
        }
        List<DepotRollout> rollouts = rollouts(scenario);
        return shared(scenario, rollouts, Optional.of(left), touched).solve().result(scenario, inputHashes, rollouts);
    }

    private static List<DepotRollout> rollouts(Scenario scenario) {
        DepotProblems problems = new DepotProblems(scenario);
        return scenario.depots().stream().map(problems::rollout).toList();
    }

    /**
     * Plans all depots in one model, some of them with less room than the scenario gives.
     *
     * @param rollouts one for each depot of the scenario, in its order
     * @throws NoPlanException when the model has no plan within the limits
     */
    public FleetResult planAsOne(Scenario scenario, List<DepotRollout> rollouts) {
        return WholeMethod.solve(scenario, rollouts).result(scenario, new TreeMap<>(), rollouts);
    }

    /**
     * Plans some depots of a fleet that shares nothing. The gap asked for is that of all depots together, so that what the others leave of it is free
     * for these; but none of them is left more than twice as far open as asked, as long as its search can go on.
     *
     * @param others cost and bound of the fleet's other depots
     * @param some the scenario with these depots only
     * @throws NoPlanException when a depot has no plan within the limits
     */
    public FleetResult planBeside(Certificate others, Scenario some, SortedMap<String, String> inputHashes) {
        List<DepotRollout> rollouts = rollouts(some);
        return apart(some, rollouts, others, Aim.EACH).result(some, inputHashes, rollouts);
    }

    private FleetPlan apart(Scenario scenario, List<DepotRollout> rollouts, Certificate others, Aim aim) {
        return new ApartFleet(scenario, rollouts, others, aim, progress, control).solve();
    }
}
