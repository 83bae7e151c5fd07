package depot.optimizer.sweep;

import depot.optimizer.mip.Engine;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.replay.Violation;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * The plans of all depots in a case, and what their replays said.
 *
 * @param plan of the fleet
 * @param depots one for each of its depots and phases, in the plan's order
 * @param troubles rules that the depots break together, in words
 */
public record FleetOutcome(Plan plan, List<DepotOutcome> depots, List<String> troubles) {

    /** Copies the lists. */
    public FleetOutcome {
        depots = List.copyOf(depots);
        troubles = List.copyOf(troubles);
    }

    /** Of depots that were planned by themselves: costs and bounds add up. */
    public static FleetOutcome ofApart(Scenario scenario, List<DepotOutcome> depots) {
        SolveSettings solve = scenario.solve();
        Plan plan = new Plan(
                Plan.FORMAT_VERSION,
                scenario.name(),
                scenario.currency().getCurrencyCode(),
                new TreeMap<>(),
                Engine.libraryVersion(),
                new PlanSettings(
                        solve.relativeGap(), solve.nodeLimit(), solve.threads(), solve.seed(), solve.handoverMinutes()),
                Certificate.sum(depots.stream().map(DepotOutcome::certificate).toList(), solve.relativeGap()),
                depots.stream().map(DepotOutcome::plan).toList());
        return new FleetOutcome(plan, depots, List.of());
    }

    /** Of a fleet that was planned as a whole. */
    static FleetOutcome of(Plan plan, ReplayReport replay) {
        List<DepotOutcome> depots = new ArrayList<>();
        for (int d = 0; d < plan.depots().size(); d++) {
            depots.add(DepotOutcome.of(plan.depots().get(d), replay.depots().get(d)));
        }
        return new FleetOutcome(
                plan, depots, replay.fleet().stream().map(Violation::message).toList());
    }

    /** The same, replayed. */
    static FleetOutcome replayed(Scenario scenario, Plan plan) {
        return of(plan, FleetReplay.run(scenario, plan));
    }

    /** The same with another bound. */
    FleetOutcome bounded(double bound, double askedGap) {
        Certificate certificate = Certificate.of(cost(), Math.min(cost(), bound), askedGap);
        return new FleetOutcome(plan.with(certificate, plan.fleetCosts(), plan.depots()), depots, troubles);
    }

    /** Present cost. */
    public double cost() {
        return plan.certificate().cost();
    }

    /**
     * Present cost of what has a price: where shortage is forbidden, what counts for energy not covered is a penalty that nobody pays, and is left out.
     */
    public double pricedCost(Scenario scenario) {
        return cost() - penalty(scenario);
    }

    /** What counts for energy not covered where that is forbidden. */
    public double penalty(Scenario scenario) {
        return scenario.shortageCostPerKwh().isPresent() ? 0 : sum(depot -> lines(depot, CostLine.Category.SHORTAGE));
    }

    /** Present cost of the petrol of crews that stay on it. */
    public double petrol() {
        return sum(depot -> lines(depot, CostLine.Category.PETROL));
    }

    private static double lines(DepotOutcome depot, CostLine.Category category) {
        return depot.plan().costs().stream()
                .filter(line -> line.category() == category)
                .mapToDouble(CostLine::presentCost)
                .sum();
    }

    /** No plan costs less. */
    public double bound() {
        return plan.certificate().bound();
    }

    /** Share of the cost that the bound leaves open. */
    public double gap() {
        return plan.certificate().gap();
    }

    /** Sum of a figure over depots and phases. */
    public double sum(ToDoubleFunction<DepotOutcome> figure) {
        return depots.stream().mapToDouble(figure).sum();
    }

    /** Whether every plan is proven, and the fleet as a whole. */
    public boolean proven() {
        return troubles.isEmpty() && depots.stream().allMatch(DepotOutcome::proven);
    }

    /** Plans of one depot, phase by phase. */
    List<DepotPlan> of(String depot) {
        return plan.depots().stream().filter(each -> each.depot().equals(depot)).toList();
    }
}
