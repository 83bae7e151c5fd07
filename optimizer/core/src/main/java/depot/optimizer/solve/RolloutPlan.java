package depot.optimizer.solve;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A depot's plans for all phases.
 *
 * @param phases one plan for each phase, in order; the certificate of each is that of the whole rollout
 * @param cost of all phases; what a crew's petrol and base cost at home counts here even where it works elsewhere, and is taken off where it does
 * @param use of the shared limits that concern the depot
 */
public record RolloutPlan(List<DepotPlan> phases, double cost, Map<SharedLimit, Double> use) {

    /** Adds up what plans cost and use. */
    public static RolloutPlan of(DepotRollout rollout, List<DepotPlan> phases) {
        double cost = 0;
        for (int f = 0; f < phases.size(); f++) {
            cost += lines(phases.get(f));
            DepotProblem problem = rollout.phases().get(f);
            for (String guest : phases.get(f).guests()) {
                cost -= problem.guestSavings().getOrDefault(guest, 0.0)
                        * problem.money().annuity();
            }
            for (String crew : phases.get(f).away()) {
                cost += atHome(problem, crew) * problem.money().annuity();
            }
        }
        return new RolloutPlan(List.copyOf(phases), cost, PlanUse.of(rollout, phases));
    }

    /**
     * The same plans when some of the depot's crews work from other depots: their petrol and their base are no longer paid for here.
     *
     * @param away crews by id of the phase
     */
    public RolloutPlan withAway(DepotRollout rollout, Map<String, Set<String>> away) {
        List<DepotPlan> plans = new ArrayList<>();
        double saved = 0;
        for (int f = 0; f < phases.size(); f++) {
            Optional<DepotPlan> before = f == 0 ? Optional.empty() : Optional.of(plans.get(f - 1));
            DepotPlan plan =
                    phases.get(f).withAway(away.getOrDefault(phases.get(f).phase(), Set.of()));
            List<CostLine> costs = CostBook.of(rollout.phases().get(f), f + 1, plan, before);
            double cost = costs.stream().mapToDouble(CostLine::presentCost).sum();
            saved += lines(phases.get(f)) - cost;
            plans.add(plan.with(plan.days(), costs).withStop(plan.stop().withCertificate(Certificate.of(cost, 0, 0))));
        }
        return new RolloutPlan(List.copyOf(plans), cost - saved, use);
    }

    /** What a crew of the depot costs a year on petrol. */
    private static double atHome(DepotProblem problem, String id) {
        return problem.crews().stream()
                        .filter(crew -> crew.id().equals(id))
                        .mapToDouble(crew -> crew.petrolCostPerYear().doubleValue())
                        .sum()
                + problem.baseCostPerYear().getOrDefault(id, 0.0);
    }

    private static double lines(DepotPlan plan) {
        return plan.costs().stream().mapToDouble(CostLine::presentCost).sum();
    }

    /** The same plans with another account of their solve. */
    public RolloutPlan withStop(SolveStop stop) {
        return new RolloutPlan(phases.stream().map(plan -> plan.withStop(stop)).toList(), cost, use);
    }

    /** The account of the solve. */
    public SolveStop stop() {
        return phases.get(0).stop();
    }
}
