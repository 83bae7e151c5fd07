package depot.optimizer.rerun;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Owned;
import depot.optimizer.solve.MeasuredPlan;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A depot's plan as another problem of the same depot reckons it: the same equipment and days, but which pieces count as owned, which building work is
 * done already, and what all of it costs, are that problem's.
 */
final class Reckoning {

    /** Whose owned pieces may count for whom. */
    enum Sharing {
        /** Pieces count for their owner only, as the model has it. */
        OWNERS,
        /** Pieces that an owner does not need count for others in the depot. */
        DEPOT
    }

    private final DepotProblem problem;
    private final Pieces left = new Pieces();
    private final Map<String, Integer> spare;

    private Reckoning(DepotProblem problem, DepotPlan plan, Sharing sharing) {
        this.problem = problem;
        Pieces owned = new Pieces();
        problem.owned().forEach((Owned row) -> {
            owned.add(row);
            left.add(row);
        });
        spare = new TreeMap<>();
        if (sharing == Sharing.DEPOT) {
            Pieces used = Pieces.used(plan);
            for (Owned row : owned.rows(problem.depot().id())) {
                int unused = row.count() - used.count(row.crew().orElse(""), row.item());
                spare.merge(row.item(), Math.max(0, unused), Integer::sum);
            }
        }
    }

    /** The plan with its costs; the bound of its certificate is the old one, or the cost where that is less. */
    static DepotPlan of(DepotProblem problem, DepotPlan plan, Sharing sharing) {
        return of(problem, 1, plan, Optional.empty(), sharing);
    }

    /**
     * The same for the plan of one of several phases.
     *
     * @param problem which says what is there when the phase begins
     * @param phase number of the phase, from 1
     * @param before plan of the phase before
     */
    static DepotPlan of(DepotProblem problem, int phase, DepotPlan plan, Optional<DepotPlan> before, Sharing sharing) {
        Reckoning reckoning = new Reckoning(problem, plan, sharing);
        PlanParts parts = new PlanParts(plan);
        Set<String> candidates = new TreeSet<>();
        problem.circuits().stream()
                .map(DepotProblem.CircuitSite::circuit)
                .filter(Circuit::candidate)
                .forEach(circuit -> candidates.add(circuit.id()));
        parts.circuitsBuilt =
                plan.circuitsBuilt().stream().filter(candidates::contains).toList();
        parts.supplyUpgraded = plan.supplyUpgraded() && problem.depot().upgradeOffered();
        parts.chargers = plan.chargers().stream().map(reckoning::charger).toList();
        parts.units = plan.units().stream().map(reckoning::unit).toList();
        parts.packs = plan.packs().stream().map(reckoning::packs).toList();
        parts.kits = plan.kits().stream().map(reckoning::kit).toList();
        return MeasuredPlan.of(problem, phase, parts.plan(), before, Map.of());
    }

    private ChargerPlacement charger(ChargerPlacement charger) {
        return new ChargerPlacement(
                charger.id(),
                charger.circuit(),
                charger.chargerType(),
                charger.outlet(),
                charger.shared(),
                charger.priority(),
                take("", charger.chargerType(), 1) == 1);
    }

    private UnitPlacement unit(UnitPlacement unit) {
        return new UnitPlacement(unit.circuit(), unit.unitType(), take("", unit.unitType(), 1) == 1);
    }

    private PackStock packs(PackStock stock) {
        String owner = stock.pool().equals(problem.depot().id()) ? "" : stock.pool();
        int owned = take(owner, stock.packType(), stock.count());
        return new PackStock(stock.pool(), stock.packType(), stock.count(), owned, stock.replacedPerYear());
    }

    private CrewKit kit(CrewKit kit) {
        return new CrewKit(kit.crew(), kit.item(), kit.count(), take(kit.crew(), kit.item(), kit.count()));
    }

    /** How many of some pieces in use are owned: the owner's own first, then what others can spare. */
    private int take(String owner, String item, int wanted) {
        int own = Math.min(wanted, Math.max(0, left.count(owner, item)));
        left.add(owner, item, -own);
        int fromOthers = Math.min(wanted - own, spare.getOrDefault(item, 0));
        spare.merge(item, -fromOthers, Integer::sum);
        return own + fromOthers;
    }
}
