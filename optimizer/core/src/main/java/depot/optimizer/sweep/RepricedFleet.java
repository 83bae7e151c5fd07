package depot.optimizer.sweep;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RepricedPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A fleet's plan that was made for another scenario of the same depots, at this one's prices. Whether it keeps the rules is for a replay to say. */
final class RepricedFleet {
    private RepricedFleet() {}

    /** The same purchases and days at the job's prices; a certificate without a bound. */
    static Plan of(FleetJob job, Plan plan) {
        List<String> phases = plan.phases();
        List<DepotPlan> depots = plan.depots().stream()
                .map(depot -> {
                    int phase = phases.indexOf(depot.phase());
                    DepotRollout rollout = job.rollouts().stream()
                            .filter(each -> each.depot().id().equals(depot.depot()))
                            .findFirst()
                            .orElseThrow();
                    return RepricedPlan.of(rollout.phases().get(phase), phase + 1, depot, plan.before(depot));
                })
                .toList();
        return of(job, plan, depots);
    }

    /** A plan with other plans of its depots, which have the job's prices already; a certificate without a bound. */
    static Plan of(FleetJob job, Plan plan, List<DepotPlan> depots) {
        List<FleetCost> fleetCosts = fleetCosts(job.scenario(), plan.fleetCosts());
        double cost = depots.stream()
                        .mapToDouble(depot -> depot.stop().certificate().cost())
                        .sum()
                + fleetCosts.stream().mapToDouble(FleetCost::presentCost).sum();
        return plan.with(
                Certificate.of(cost, 0, job.scenario().solve().relativeGap()), List.copyOf(fleetCosts), depots);
    }

    private static List<FleetCost> fleetCosts(Scenario scenario, List<FleetCost> old) {
        List<SharedLimit> limits = SharedLimits.of(scenario);
        QuantityPrices quantities = new QuantityPrices(scenario);
        List<FleetCost> costs = new ArrayList<>();
        for (FleetCost cost : old) {
            Optional<SharedLimit> quantity = limits.stream()
                    .filter(limit -> limit.kind() == SharedLimit.Kind.QUANTITY
                            && limit.phase().equals(cost.phase())
                            && limit.subject().equals(cost.item()))
                    .findFirst();
            quantity.flatMap(limit -> repriced(quantities, limit, cost)).ifPresent(costs::add);
        }
        return costs;
    }

    private static Optional<FleetCost> repriced(QuantityPrices quantities, SharedLimit limit, FleetCost cost) {
        return switch (cost.kind()) {
            case SPARE_PIECES -> Optional.of(quantities.spare(limit, cost.pieces()));
            case QUANTITY_PRICE ->
                quantities.tiers(limit).stream()
                        .filter(tier -> tier.fromCount() <= cost.pieces())
                        .reduce((lower, higher) -> higher)
                        .map(tier -> tier.cost(cost.pieces()));
        };
    }
}
