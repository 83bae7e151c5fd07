package depot.optimizer.advice;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.DeliveryLimit;
import depot.optimizer.scenario.RegionBudget;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Changes;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A limit that depots share with a little more room: a piece more, or a hundredth more money, since a single unit of it seldom pays for anything more.
 *
 * @param step how much more, pieces or money
 * @param scenario with that limit loosened
 */
record SharedRoom(BigDecimal step, Scenario scenario) {

    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    /**
     * A limit loosened.
     *
     * @param limit a budget, a region's budget or a delivery of the scenario
     * @throws IllegalArgumentException if it is a limit of another kind
     */
    static SharedRoom more(Scenario scenario, SharedLimit limit) {
        BigDecimal step = step(limit);
        return new SharedRoom(
                step,
                switch (limit.kind()) {
                    case BUDGET ->
                        Changes.apply(
                                scenario,
                                new Change(
                                        ChangeKind.BUDGET,
                                        limit.phase(),
                                        BigDecimal.valueOf(limit.most()).add(step)));
                    case REGION_BUDGET -> Variants.with(scenario, moreForRegion(scenario.coupling(), limit, step));
                    case DELIVERY -> Variants.with(scenario, moreDelivered(scenario.coupling(), limit, step));
                    case QUANTITY, MOVES, CREW, VISIT ->
                        throw new IllegalArgumentException(limit.name() + " has no amount that could be more.");
                });
    }

    private static BigDecimal step(SharedLimit limit) {
        return limit.kind() == SharedLimit.Kind.DELIVERY
                ? BigDecimal.ONE
                : BigDecimal.valueOf(limit.most())
                        .multiply(HUNDREDTH)
                        .setScale(0, RoundingMode.CEILING)
                        .max(BigDecimal.ONE);
    }

    private static Coupling moreForRegion(Coupling from, SharedLimit limit, BigDecimal step) {
        return new Coupling(
                from.phases(),
                from.regionBudgets().stream()
                        .map(budget -> budget.phase().equals(limit.phase())
                                        && budget.region().equals(limit.subject())
                                ? new RegionBudget(
                                        budget.phase(),
                                        budget.region(),
                                        budget.budget().add(step))
                                : budget)
                        .toList(),
                from.conversions(),
                from.priceTiers(),
                from.deliveryLimits(),
                from.moves());
    }

    private static Coupling moreDelivered(Coupling from, SharedLimit limit, BigDecimal step) {
        return new Coupling(
                from.phases(),
                from.regionBudgets(),
                from.conversions(),
                from.priceTiers(),
                from.deliveryLimits().stream()
                        .map(delivery -> delivery.phase().equals(limit.phase())
                                        && delivery.item().equals(limit.subject())
                                ? new DeliveryLimit(
                                        delivery.item(), delivery.phase(), delivery.count() + step.intValueExact())
                                : delivery)
                        .toList(),
                from.moves());
    }
}
