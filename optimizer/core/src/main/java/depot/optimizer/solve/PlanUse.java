package depot.optimizer.solve;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.problem.ChargerOption;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.SharingUnitType;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What plans use of what the fleet shares. */
final class PlanUse {

    private final DepotProblem problem;
    private final DepotPlan plan;
    private final DepotPlan before;

    private PlanUse(DepotProblem problem, DepotPlan plan, DepotPlan before) {
        this.problem = problem;
        this.plan = plan;
        this.before = before;
    }

    /** Use of every limit that concerns a depot. */
    static Map<SharedLimit, Double> of(DepotRollout rollout, List<DepotPlan> phases) {
        Map<SharedLimit, Double> use = new LinkedHashMap<>();
        for (SharedLimit limit : rollout.limits()) {
            double sum = 0;
            for (int f = 0; f < phases.size(); f++) {
                if (limit.phase().isEmpty()
                        || limit.phase().equals(phases.get(f).phase())) {
                    DepotPlan before = f == 0 ? null : phases.get(f - 1);
                    sum += new PlanUse(rollout.phases().get(f), phases.get(f), before).of(limit);
                }
            }
            use.put(limit, sum);
        }
        return use;
    }

    private double of(SharedLimit limit) {
        return switch (limit.kind()) {
            case BUDGET, REGION_BUDGET -> capital();
            case DELIVERY -> bought().getOrDefault(limit.subject(), 0);
            case QUANTITY -> -bought().getOrDefault(limit.subject(), 0);
            case MOVES ->
                plan.moves().stream()
                        .filter(moved -> moved.item().equals(limit.subject()))
                        .mapToInt(MovedPieces::count)
                        .sum();
            case VISIT -> VisitUse.of(problem, plan, limit.subject());
            case CREW -> worksHere(limit.subject()) ? 1 : 0;
        };
    }

    private boolean worksHere(String crew) {
        boolean own = problem.crews().stream().anyMatch(c -> c.id().equals(crew)) && !problem.guest(crew);
        boolean withPacks = !plan.onPetrol().contains(crew) && !plan.away().contains(crew);
        return plan.guests().contains(crew) || (own && withPacks);
    }

    private double capital() {
        Map<String, BigDecimal> prices = prices();
        BigDecimal sum = BigDecimal.ZERO;
        for (Map.Entry<String, Integer> item : bought().entrySet()) {
            sum = sum.add(prices.get(item.getKey()).multiply(BigDecimal.valueOf(item.getValue())));
        }
        for (CircuitSite site : problem.circuits()) {
            String id = site.circuit().id();
            if (plan.circuitsBuilt().contains(id)
                    && (before == null || !before.circuitsBuilt().contains(id))) {
                sum = sum.add(site.circuit().installCost());
            }
        }
        if (plan.supplyUpgraded() && (before == null || !before.supplyUpgraded())) {
            sum = sum.add(problem.depot().supplyUpgradeCost());
        }
        return sum.doubleValue();
    }

    /** Pieces bought in the phase, by type. */
    private Map<String, Integer> bought() {
        Map<String, Integer> pieces = new TreeMap<>();
        plan.packs().forEach(s -> pieces.merge(s.packType(), s.count() - s.owned(), Integer::sum));
        plan.kits().forEach(k -> pieces.merge(k.item(), k.count() - k.owned(), Integer::sum));
        plan.chargers().stream()
                .filter(charger -> !charger.owned())
                .map(ChargerPlacement::chargerType)
                .forEach(type -> pieces.merge(type, 1, Integer::sum));
        plan.units().stream()
                .filter(unit -> !unit.owned())
                .map(UnitPlacement::unitType)
                .forEach(type -> pieces.merge(type, 1, Integer::sum));
        return pieces;
    }

    /** What a piece of each type is paid for, mounting included. */
    private Map<String, BigDecimal> prices() {
        Map<String, BigDecimal> prices = new TreeMap<>();
        for (PackType type : problem.packTypes()) {
            prices.put(type.id(), type.price());
        }
        for (ChargerOption option : Stream.concat(problem.chargers().stream(), problem.portableChargers().stream())
                .toList()) {
            ChargerType type = option.type();
            prices.put(type.id(), type.price().add(type.installCost()));
        }
        for (SharingUnitType type : problem.unitTypes()) {
            prices.put(type.id(), type.price().add(type.installCost()));
        }
        for (PowerBankType type : problem.bankTypes()) {
            prices.put(type.id(), type.price());
        }
        return prices;
    }
}
