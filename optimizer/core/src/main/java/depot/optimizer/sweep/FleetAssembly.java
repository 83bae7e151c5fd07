package depot.optimizer.sweep;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.QuantityPrices.Tier;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.MeasuredPlan;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.UseRange;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts plans of single depots together to a fleet's plan: who works away from home, which quantity prices are reached, and what all of it costs. Whether
 * the plan keeps the rules is for a replay to say.
 */
public final class FleetAssembly {

    private final Scenario scenario;
    private final List<SharedLimit> limits;
    private final QuantityPrices quantities;
    private final Map<String, DepotRollout> rollouts = new LinkedHashMap<>();

    /** For the depots of a scenario. */
    public FleetAssembly(Scenario scenario) {
        this.scenario = scenario;
        limits = SharedLimits.of(scenario);
        quantities = new QuantityPrices(scenario);
        DepotProblems problems = new DepotProblems(scenario);
        scenario.depots().forEach(depot -> rollouts.put(depot.id(), problems.rollout(depot)));
    }

    /** The problem of a depot over all phases. */
    public DepotRollout rollout(String depot) {
        return rollouts.get(depot);
    }

    /** Everything that the depots share. */
    public List<SharedLimit> limits() {
        return limits;
    }

    /** A limit by its name; empty: there is none of that name. */
    public Optional<SharedLimit> limit(String name) {
        return limits.stream().filter(limit -> limit.name().equals(name)).findFirst();
    }

    /** The plans of each depot, phase by phase. */
    public static Map<String, List<DepotPlan>> byDepot(Plan plan) {
        Map<String, List<DepotPlan>> depots = new LinkedHashMap<>();
        plan.depots().forEach(depot -> depots.computeIfAbsent(depot.depot(), none -> new ArrayList<>())
                .add(depot));
        return depots;
    }

    /**
     * The fleet's plan.
     *
     * @param like says what goes into it beside depots and costs
     * @param depots by id, phase by phase, with costs of this scenario; each depot of the scenario is there
     * @param bound no plan of the fleet costs less
     */
    public Plan plan(Plan like, Map<String, List<DepotPlan>> depots, double bound) {
        Map<String, Set<String>> guests = guests(depots);
        Map<String, List<DepotPlan>> settled = new LinkedHashMap<>();
        rollouts.keySet().forEach(depot -> settled.put(depot, settled(rollouts.get(depot), depots.get(depot), guests)));
        List<FleetCost> fleetCosts = fleetCosts(settled);
        List<DepotPlan> plans = new ArrayList<>();
        for (int f = 0; f < scenario.coupling().phases().size(); f++) {
            int phase = f;
            settled.values().forEach(ofDepot -> plans.add(ofDepot.get(phase)));
        }
        double gap = scenario.solve().relativeGap();
        double cost = plans.stream().mapToDouble(FleetAssembly::lines).sum()
                + fleetCosts.stream().mapToDouble(FleetCost::presentCost).sum();
        double lowest = Math.min(cost, bound);
        double share = cost == 0 ? 1 : lowest / cost;
        return like.with(
                Certificate.of(cost, lowest, gap),
                fleetCosts,
                plans.stream()
                        .map(plan -> plan.withStop(
                                plan.stop().withCertificate(Certificate.of(lines(plan), lines(plan) * share, gap))))
                        .toList());
    }

    private static double lines(DepotPlan plan) {
        return plan.costs().stream().mapToDouble(CostLine::presentCost).sum();
    }

    private static Map<String, Set<String>> guests(Map<String, List<DepotPlan>> depots) {
        Map<String, Set<String>> guests = new HashMap<>();
        depots.values()
                .forEach(plans -> plans.forEach(plan -> guests.computeIfAbsent(plan.phase(), none -> new HashSet<>())
                        .addAll(plan.guests())));
        return guests;
    }

    /** Crews without packs from here are away where another depot has them as guests, and on petrol otherwise. */
    private static List<DepotPlan> settled(
            DepotRollout rollout, List<DepotPlan> plans, Map<String, Set<String>> guests) {
        List<DepotPlan> settled = new ArrayList<>();
        for (int f = 0; f < plans.size(); f++) {
            DepotPlan plan = plans.get(f);
            DepotPlan home = atHome(plan).withAway(guests.getOrDefault(plan.phase(), Set.of()));
            Optional<DepotPlan> before = f == 0 ? Optional.empty() : Optional.of(settled.get(f - 1));
            boolean same = home.away().equals(plan.away());
            settled.add(same ? plan : MeasuredPlan.of(rollout.phases().get(f), f + 1, home, before, Map.of()));
        }
        return settled;
    }

    private static DepotPlan atHome(DepotPlan plan) {
        List<String> idle = new ArrayList<>(plan.onPetrol());
        idle.addAll(plan.away());
        return plan.withCrews(List.of(), idle);
    }

    /** What the plans of a depot use of the limits that concern it. */
    public Map<SharedLimit, Double> use(String depot, List<DepotPlan> plans) {
        return RolloutPlan.of(rollouts.get(depot), plans).use();
    }

    /** What all depots use of each limit together, pieces that count towards quantity prices included. */
    public Map<SharedLimit, Double> use(Map<String, List<DepotPlan>> depots) {
        Map<SharedLimit, Double> all = new LinkedHashMap<>();
        limits.forEach(limit -> all.put(limit, 0.0));
        depots.forEach((depot, plans) -> use(depot, plans).forEach((limit, use) -> all.merge(limit, use, Double::sum)));
        return all;
    }

    /**
     * How much of each limit a depot may use when the others go by their plans. Quantity prices leave it free.
     *
     * @param depots plans of the fleet, those of the depot itself not looked at
     * @param fleetCosts what the fleet pays beside its depots
     */
    public Map<SharedLimit, UseRange> left(
            String depot, Map<String, List<DepotPlan>> depots, List<FleetCost> fleetCosts) {
        Map<String, List<DepotPlan>> others = new LinkedHashMap<>(depots);
        others.remove(depot);
        Map<SharedLimit, Double> used = use(others);
        Map<SharedLimit, UseRange> left = new LinkedHashMap<>();
        for (SharedLimit limit : rollouts.get(depot).limits()) {
            if (limit.kind() != Kind.QUANTITY) {
                double most = limit.most() - used.get(limit) - ofFleet(limit, fleetCosts);
                left.put(limit, limit.equation() ? UseRange.exactly(most) : UseRange.upTo(most));
            }
        }
        return left;
    }

    /** What quantity prices and spare pieces use of a limit; below 0 where they take off. */
    public static double ofFleet(SharedLimit limit, List<FleetCost> fleetCosts) {
        return fleetCosts.stream()
                .filter(cost -> cost.phase().equals(limit.phase()))
                .mapToDouble(cost -> switch (limit.kind()) {
                    case BUDGET ->
                        cost.kind() == FleetCost.Kind.SPARE_PIECES
                                ? cost.price() * cost.pieces()
                                : -cost.price() * cost.pieces();
                    case DELIVERY ->
                        cost.kind() == FleetCost.Kind.SPARE_PIECES
                                        && cost.item().equals(limit.subject())
                                ? cost.pieces()
                                : 0;
                    default -> 0;
                })
                .sum();
    }

    /** The prices that the numbers bought reach; spare pieces where they save more than they cost. */
    private List<FleetCost> fleetCosts(Map<String, List<DepotPlan>> depots) {
        Map<SharedLimit, Double> used = use(depots);
        List<FleetCost> costs = new ArrayList<>();
        for (SharedLimit limit : limits) {
            if (limit.kind() == Kind.QUANTITY) {
                costs.addAll(cheapest(limit, (int) Math.rint(-used.get(limit)), used));
            }
        }
        return List.copyOf(costs);
    }

    private List<FleetCost> cheapest(SharedLimit quantity, int bought, Map<SharedLimit, Double> used) {
        List<FleetCost> best = at(quantity, bought, 0);
        for (Tier tier : quantities.tiers(quantity)) {
            int spare = tier.fromCount() - bought;
            if (bought > 0 && spare > 0 && deliverable(quantity, bought + spare)) {
                List<FleetCost> other = at(quantity, bought, spare);
                boolean affordable = budget(quantity)
                        .map(budget -> used.get(budget) + ofFleet(budget, other) <= budget.most())
                        .orElse(true);
                best = affordable && sum(other) < sum(best) ? other : best;
            }
        }
        return best;
    }

    private List<FleetCost> at(SharedLimit quantity, int bought, int spare) {
        List<FleetCost> costs = new ArrayList<>();
        if (spare > 0) {
            costs.add(quantities.spare(quantity, spare));
        }
        int all = bought + spare;
        quantities.tiers(quantity).stream()
                .filter(tier -> all > 0 && tier.fromCount() <= all)
                .reduce((lower, higher) -> higher)
                .ifPresent(tier -> costs.add(tier.cost(all)));
        return costs;
    }

    private static double sum(List<FleetCost> costs) {
        return costs.stream().mapToDouble(FleetCost::presentCost).sum();
    }

    private boolean deliverable(SharedLimit quantity, int pieces) {
        return limits.stream()
                .filter(limit -> limit.kind() == Kind.DELIVERY
                        && limit.phase().equals(quantity.phase())
                        && limit.subject().equals(quantity.subject()))
                .allMatch(limit -> pieces <= limit.most());
    }

    private Optional<SharedLimit> budget(SharedLimit quantity) {
        return limits.stream()
                .filter(limit -> limit.kind() == Kind.BUDGET && limit.phase().equals(quantity.phase()))
                .findFirst();
    }
}
