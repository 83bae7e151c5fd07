package depot.optimizer.sweep;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Visit;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.VisitUse;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Changes;
import depot.optimizer.sweep.change.Ownership;
import depot.optimizer.sweep.change.StandingPhase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * A fleet in one phase after its plan has been carried out: depots that share nothing but the visits of their crews, and what each of them has.
 */
final class StandingFleet {

    /** In which nothing of the plan has been carried out. */
    private final Scenario before;

    private final Map<String, DepotPlan> plans;
    private final FleetAssembly there;
    private final Scenario owning;
    private final Map<String, DepotOutcome> outcomes = new ConcurrentHashMap<>();

    private StandingFleet(Scenario before, Map<String, DepotPlan> plans) {
        this.before = before;
        this.plans = plans;
        owning = carriedOut(before, plans, "", List.of());
        there = new FleetAssembly(owning);
    }

    /**
     * The fleet of a phase.
     *
     * @param phase plans of all depots for the phase, in the order of the scenario
     * @param firsts their plans for the first phase
     */
    static StandingFleet of(Scenario scenario, List<DepotPlan> phase, List<DepotPlan> firsts) {
        Map<String, DepotPlan> plans = new LinkedHashMap<>();
        phase.forEach(plan -> plans.put(plan.depot(), StandingPhase.plan(plan)));
        // What is asked of it is worked out by one thread each.
        return new StandingFleet(FleetJob.withThreads(StandingPhase.of(scenario, phase, firsts), 1), plans);
    }

    private static Scenario carriedOut(
            Scenario scenario, Map<String, DepotPlan> plans, String depot, List<Owned> lost) {
        Scenario after = scenario;
        for (DepotPlan plan : plans.values()) {
            after = Ownership.after(after, plan, plan.depot().equals(depot) ? lost : List.of());
        }
        return after;
    }

    /** The fleet with everything there, and nothing lost. */
    Scenario owning() {
        return owning;
    }

    /** The fleet after a loss. Only crews of its depot are late. */
    Scenario after(Loss loss) {
        Scenario changed = before;
        for (Change change : loss.changes()) {
            for (Crew crew : before.crews()) {
                if (crew.depot().equals(loss.depot())) {
                    changed = Changes.apply(changed, List.of(new Change(change.kind(), crew.id(), change.value())));
                }
            }
        }
        return carriedOut(changed, plans, loss.depot(), loss.pieces());
    }

    /** What a depot's plan buys and does, as one of this phase alone. */
    DepotPlan plan(String depot) {
        return plans.get(depot);
    }

    /** The depots, in the order of the scenario. */
    List<String> depots() {
        return List.copyOf(plans.keySet());
    }

    /** What the replay says of a depot with nothing lost. */
    DepotOutcome outcome(String depot) {
        return outcomes.computeIfAbsent(depot, id -> {
            DepotPlan plan = Ownership.carriedOut(plans.get(id));
            return DepotOutcome.of(plan, FleetReplay.runDepot(owning, plan));
        });
    }

    /** The problem of a depot with everything there. */
    DepotProblem problem(String depot) {
        return there.rollout(depot).first();
    }

    /** Whether any crew of a depot may charge elsewhere, or any other's here. */
    boolean visits(String depot) {
        return !there.rollout(depot).limits().isEmpty();
    }

    /** A depot and those with which it exchanges packs on visits, as they stand. */
    List<DepotPlan> around(String depot) {
        Map<String, Integer> packs = VisitUse.packs(problem(depot), plans.get(depot));
        return Stream.concat(
                        Stream.of(depot),
                        Stream.concat(problem(depot).services().stream(), problem(depot).guestServices().stream())
                                .filter(service -> packs.get(service.key()) > 0)
                                .map(Service::visit)
                                .flatMap((Visit visit) -> Stream.of(visit.home(), visit.host()))
                                .sorted())
                .distinct()
                .map(id -> PhaseLosses.standing(plans.get(id)))
                .toList();
    }
}
