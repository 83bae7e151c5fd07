package depot.optimizer.rerun;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.rerun.DepotChange.Status;
import depot.optimizer.rerun.Reckoning.Sharing;
import depot.optimizer.rerun.RoutineKeeper.Kept;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Optional;

/** Makes the changes of single depots from their plans, and reckons them. */
final class DepotChanges {

    private final EarlierRun earlier;
    private final Scenario scenario;
    private final Holdings holdings;
    private final double routineWeight;
    private final DepotProblems actual;
    private final DepotProblems equipped;
    private final DepotProblems equippedBefore;
    private final Scenario equippedScenario;
    private final Scenario equippedScenarioBefore;

    DepotChanges(EarlierRun earlier, Scenario scenario, Holdings holdings, double routineWeight) {
        this.routineWeight = routineWeight;
        this.earlier = earlier;
        this.scenario = scenario;
        this.holdings = holdings;
        equippedScenario = holdings.scenario();
        equippedScenarioBefore = Holdings.after(earlier, earlier.scenario()).scenario();
        actual = new DepotProblems(scenario);
        equipped = new DepotProblems(equippedScenario);
        equippedBefore = new DepotProblems(equippedScenarioBefore);
    }

    /** A depot that nothing touches. */
    DepotChange kept(String depot) {
        DepotPlan plan = earlier.depot(depot).orElseThrow();
        double cost = fromNowOn(equipped.of(find(equippedScenario, depot)), plan);
        return change(Status.KEPT, List.of(), Optional.of(plan), Optional.of(plan), cost, cost, Optional.empty());
    }

    /**
     * A depot that was planned with what is there.
     *
     * @param found its plan, which counts all of that as owned
     */
    DepotChange planned(DepotPlan found, List<String> reasons) {
        String depot = found.depot();
        Optional<DepotPlan> before = earlier.depot(depot);
        DepotPlan named = before.map(plan -> PlaceKeeper.keep(found, plan)).orElse(found);
        Optional<Kept> kept = before.filter(plan -> routineWeight > 0)
                .map(plan -> new RoutineKeeper(equippedScenario, routineWeight).keep(named, plan));
        DepotPlan placed = kept.map(Kept::plan).orElse(named);
        DepotPlan plan = reckoned(actual.of(find(scenario, depot)), placed);
        return change(
                before.isPresent() ? Status.PLANNED_AGAIN : Status.NEW,
                reasons,
                before,
                Optional.of(plan),
                before.map(this::costBefore).orElse(0.0),
                fromNowOn(equipped.of(find(equippedScenario, depot)), plan),
                kept.map(Kept::trade));
    }

    /** A depot that the tables no longer list. */
    DepotChange gone(DepotPlan before) {
        return change(
                Status.GONE,
                List.of("depot"),
                Optional.of(before),
                Optional.empty(),
                costBefore(before),
                0,
                Optional.empty());
    }

    private double costBefore(DepotPlan plan) {
        return fromNowOn(equippedBefore.of(find(equippedScenarioBefore, plan.depot())), plan);
    }

    private static double fromNowOn(DepotProblem problem, DepotPlan plan) {
        return Reckoning.of(problem, plan, Sharing.DEPOT).stop().certificate().cost();
    }

    /**
     * The plan as the tables reckon it. What is paid already is in its cost and in its bound alike, so that what lies between them is what the solve
     * left open.
     */
    private DepotPlan reckoned(DepotProblem problem, DepotPlan plan) {
        PlanParts parts = new PlanParts(plan);
        parts.circuitsBuilt = problem.circuits().stream()
                .map(site -> site.circuit().id())
                .filter(circuit -> plan.circuitsBuilt().contains(circuit)
                        || holdings.circuitsBuilt().contains(circuit))
                .toList();
        parts.supplyUpgraded =
                plan.supplyUpgraded() || holdings.suppliesUpgraded().contains(plan.depot());
        DepotPlan reckoned = Reckoning.of(problem, parts.plan(), Sharing.OWNERS);
        Certificate found = plan.stop().certificate();
        double cost = reckoned.stop().certificate().cost();
        double bound = cost - (found.cost() - found.bound());
        return reckoned.withStop(plan.stop()
                .withCertificate(Certificate.of(cost, bound, problem.settings().relativeGap())));
    }

    private DepotChange change(
            Status status,
            List<String> reasons,
            Optional<DepotPlan> before,
            Optional<DepotPlan> after,
            double costBefore,
            double costAfter,
            Optional<RoutineTrade> trade) {
        String depot = after.or(() -> before).orElseThrow().depot();
        return new DepotChange(
                depot,
                status,
                reasons,
                before,
                after,
                holdings.held(depot),
                scenario.circuits().stream()
                        .filter(circuit -> circuit.depot().equals(depot))
                        .map(Circuit::id)
                        .filter(holdings.circuitsBuilt()::contains)
                        .toList(),
                holdings.suppliesUpgraded().contains(depot),
                Store.of(depot, holdings.bought(depot), after),
                costBefore,
                costAfter,
                trade);
    }

    private static Depot find(Scenario scenario, String depot) {
        return scenario.depots().stream()
                .filter(each -> each.id().equals(depot))
                .findFirst()
                .orElseThrow();
    }
}
