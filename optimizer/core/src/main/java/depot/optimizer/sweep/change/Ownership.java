package depot.optimizer.sweep.change;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.UnitPlacement;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The scenario of a depot whose plan has been carried out: what the plan buys and builds is there already. */
public final class Ownership {

    private final DepotPlan plan;
    /** Pieces by crew (empty: the depot's) and item. */
    private final Map<String, Map<String, Integer>> pieces = new TreeMap<>();

    private Ownership(DepotPlan plan) {
        this.plan = plan;
    }

    /**
     * The scenario after a depot's plan has been carried out and some of its pieces have been lost.
     *
     * @param plan of one of the scenario's depots; packs of a crew's own belong to the crew
     * @param lost pieces that are there no more, by owner as in {@link Owned} and item
     */
    public static Scenario after(Scenario scenario, DepotPlan plan, List<Owned> lost) {
        Ownership ownership = new Ownership(plan);
        ownership.count(scenario, lost);
        Set<String> supplied = plan.supplyUpgraded() ? Set.of(plan.depot()) : Set.of();
        return Existing.of(scenario, ownership.owned(scenario), Set.copyOf(plan.circuitsBuilt()), supplied);
    }

    /** The same plan with every piece counted as owned, as it is in {@link #after}. */
    public static DepotPlan carriedOut(DepotPlan plan) {
        return new DepotPlan(
                plan.depot(),
                plan.phase(),
                plan.stop(),
                plan.guests(),
                plan.away(),
                plan.onPetrol(),
                false,
                List.of(),
                plan.units().stream()
                        .map(unit -> new UnitPlacement(unit.circuit(), unit.unitType(), true))
                        .toList(),
                plan.chargers().stream().map(Ownership::owned).toList(),
                plan.banks(),
                plan.packs().stream()
                        .map(stock -> new PackStock(
                                stock.pool(), stock.packType(), stock.count(), stock.count(), stock.replacedPerYear()))
                        .toList(),
                plan.kits().stream()
                        .map(kit -> new CrewKit(kit.crew(), kit.item(), kit.count(), kit.count()))
                        .toList(),
                List.of(),
                plan.days(),
                plan.costs());
    }

    private static ChargerPlacement owned(ChargerPlacement charger) {
        return new ChargerPlacement(
                charger.id(),
                charger.circuit(),
                charger.chargerType(),
                charger.outlet(),
                charger.shared(),
                charger.priority(),
                true);
    }

    /** The owner of a pool of packs as the table of what is owned names it: empty for the depot's own pool. */
    public static Optional<String> ownerOf(DepotPlan plan, String pool) {
        return pool.equals(plan.depot()) ? Optional.empty() : Optional.of(pool);
    }

    private void count(Scenario scenario, List<Owned> lost) {
        plan.chargers().forEach(charger -> add("", charger.chargerType(), 1));
        plan.units().forEach(unit -> add("", unit.unitType(), 1));
        plan.packs().forEach(stock -> add(ownerOf(plan, stock.pool()).orElse(""), stock.packType(), stock.count()));
        plan.kits().forEach(kit -> add(kit.crew(), kit.item(), kit.count()));
        Map<String, Map<String, Integer>> before = new TreeMap<>();
        scenario.owned().stream().filter(this::here).forEach(row -> before.computeIfAbsent(
                        row.crew().orElse(""), none -> new TreeMap<>())
                .merge(row.item(), row.count(), Integer::sum));
        // Pieces that the plan leaves in store are still there.
        before.forEach((crew, items) -> items.forEach((item, count) -> of(crew).merge(item, count, Math::max)));
        lost.forEach(row -> add(row.crew().orElse(""), row.item(), -row.count()));
    }

    private void add(String crew, String item, int count) {
        of(crew).merge(item, count, Integer::sum);
    }

    private Map<String, Integer> of(String crew) {
        return pieces.computeIfAbsent(crew, none -> new TreeMap<>());
    }

    private List<Owned> owned(Scenario scenario) {
        List<Owned> rows = new ArrayList<>(
                scenario.owned().stream().filter(row -> !here(row)).toList());
        pieces.forEach((crew, items) -> items.forEach((item, count) -> {
            if (count > 0) {
                Optional<String> owner = crew.isEmpty() ? Optional.empty() : Optional.of(crew);
                rows.add(new Owned(plan.depot(), Optional.empty(), owner, item, count));
            }
        }));
        return rows;
    }

    private boolean here(Owned row) {
        return row.depot().equals(plan.depot());
    }
}
