package depot.optimizer.fleet;

import depot.optimizer.model.Tightening;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.HeldPurchases;
import depot.optimizer.solve.VisitUse;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a plan costs by the model alone: its purchases, with the days that the model makes of them. A plan's own cost is what the replay measures behind
 * units, which may be less; a bound is that of the model.
 */
final class ModelledCost {

    private static final Set<Category> RUNNING =
            EnumSet.of(Category.ENERGY, Category.DEMAND, Category.PACK_WEAR, Category.SHORTAGE);

    private ModelledCost() {}

    /** At least the plan's own cost. */
    static double of(Scenario scenario, Plan plan) {
        DepotProblems problems = new DepotProblems(scenario);
        double more = 0;
        for (DepotPlan depotPlan : plan.depots()) {
            if (!depotPlan.units().isEmpty()) {
                Depot depot = scenario.depots().stream()
                        .filter(each -> each.id().equals(depotPlan.depot()))
                        .findFirst()
                        .orElseThrow();
                int phase = plan.phases().indexOf(depotPlan.phase());
                DepotProblem problem = problems.rollout(depot).phases().get(phase);
                DepotPlan held = new HeldPurchases(problem, depotPlan, VisitUse.packs(problem, depotPlan))
                        .plan(Collections.nCopies(problem.days().size(), Tightening.NONE));
                more += Math.max(0, running(held) - running(depotPlan));
            }
        }
        return plan.certificate().cost() + more;
    }

    private static double running(DepotPlan plan) {
        return plan.costs().stream()
                .filter(line -> RUNNING.contains(line.category()))
                .mapToDouble(CostLine::presentCost)
                .sum();
    }
}
