package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.DeliveryLimit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.RegionBudget;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Rules that the plans of all depots keep or break together: budgets, deliveries, quantity prices, moves, visits, and where crews work. */
final class FleetRules {

    /** What rounding may add to a budget. */
    private static final BigDecimal CENT = new BigDecimal("0.01");

    private final Scenario scenario;
    private final Plan plan;
    private final PhaseSpending spending;
    private final Violations violations = Violations.ofDepot("fleet");

    private FleetRules(Scenario scenario, Plan plan) {
        this.scenario = scenario;
        this.plan = plan;
        spending = new PhaseSpending(scenario, plan);
    }

    static List<Violation> check(Scenario scenario, Plan plan) {
        FleetRules rules = new FleetRules(scenario, plan);
        scenario.coupling().phases().forEach(rules::phase);
        rules.moves();
        new VisitRules(scenario, plan, rules.violations).check();
        new FleetCosts(scenario, plan, rules.spending, rules.violations).check();
        return rules.violations.list();
    }

    private void phase(Phase phase) {
        phase.budget()
                .ifPresent(budget -> budget(
                        "budget of " + phase.id(),
                        budget,
                        spending.capital(phase.id(), depot -> true).add(spending.fleet(phase.id()))));
        for (RegionBudget budget : scenario.coupling().regionBudgets()) {
            if (budget.phase().equals(phase.id())) {
                budget(
                        "budget of " + budget.region() + " in " + phase.id(),
                        budget.budget(),
                        spending.capital(phase.id(), inRegion(budget.region())));
            }
        }
        for (DeliveryLimit limit : scenario.coupling().deliveryLimits()) {
            if (limit.phase().equals(phase.id())) {
                int bought = spending.bought(phase.id(), limit.item()) + spare(phase.id(), limit.item());
                if (bought > limit.count()) {
                    violations.add(
                            Kind.SHARED_LIMIT,
                            limit.item(),
                            bought,
                            limit.count(),
                            phase.id() + " buys " + bought + " " + limit.item() + ", but only " + limit.count()
                                    + " can be delivered");
                }
            }
        }
        crews(phase.id());
    }

    private Predicate<DepotPlan> inRegion(String region) {
        return plan -> scenario.depots().stream()
                .filter(depot -> depot.id().equals(plan.depot()))
                .map(Depot::region)
                .anyMatch(own -> own.filter(region::equals).isPresent());
    }

    private int spare(String phase, String item) {
        return plan.fleetCosts().stream()
                .filter(cost -> cost.kind() == FleetCost.Kind.SPARE_PIECES
                        && cost.phase().equals(phase)
                        && cost.item().equals(item))
                .mapToInt(FleetCost::pieces)
                .sum();
    }

    private void budget(String name, BigDecimal budget, BigDecimal spent) {
        if (spent.subtract(CENT).compareTo(budget) > 0) {
            violations.add(
                    Kind.SHARED_LIMIT,
                    name,
                    spent.doubleValue(),
                    budget.doubleValue(),
                    "the " + name + " is " + budget.toPlainString() + ", the plan spends " + spent.toPlainString());
        }
    }

    /** Each crew works from one depot: its own unless it is away, and then as the guest of one of its bases. */
    private void crews(String phase) {
        List<DepotPlan> ofPhase = plan.depots().stream()
                .filter(depot -> depot.phase().equals(phase))
                .toList();
        for (Crew crew : scenario.crews()) {
            List<String> places = new ArrayList<>();
            for (DepotPlan depot : ofPhase) {
                boolean own = depot.depot().equals(crew.depot());
                if (own ? !depot.away().contains(crew.id()) : depot.guests().contains(crew.id())) {
                    places.add(depot.depot());
                }
            }
            boolean homePlanned =
                    ofPhase.stream().anyMatch(depot -> depot.depot().equals(crew.depot()));
            if (places.size() > 1 || (places.isEmpty() && homePlanned)) {
                violations.add(
                        Kind.CREW_BASE,
                        crew.id(),
                        crew.id() + " works from " + (places.isEmpty() ? "no depot" : String.join(" and ", places))
                                + " in " + phase);
            }
            places.stream()
                    .filter(place -> !scenario.basesOf(crew).contains(place))
                    .forEach(place ->
                            violations.add(Kind.CREW_BASE, crew.id(), place + " is not a base of " + crew.id()));
        }
    }

    /** What comes to some depots goes from others. */
    private void moves() {
        TreeMap<String, Integer> sums = new TreeMap<>();
        for (DepotPlan depot : plan.depots()) {
            for (MovedPieces moved : depot.moves()) {
                sums.merge(moved.item(), moved.count(), Integer::sum);
                if (scenario.coupling().moves().stream()
                        .noneMatch(move -> move.item().equals(moved.item()))) {
                    violations.add(Kind.MOVE, moved.item(), moved.item() + " is moved, but no move of it is on offer");
                }
            }
        }
        sums.forEach((item, sum) -> {
            if (sum > 0) {
                violations.add(Kind.MOVE, item, sum, 0, sum + " " + item + " come from nowhere");
            }
        });
    }
}
