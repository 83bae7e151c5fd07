package depot.optimizer.sweep;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.scenario.Owned;
import depot.optimizer.sweep.Loss.Kind;
import depot.optimizer.sweep.change.Ownership;
import depot.optimizer.sweep.spec.LossChanges;
import depot.optimizer.sweep.spec.Sweep.Losses;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lists what may fail at a depot, given its base plan. */
final class LossList {

    private final DepotPlan plan;
    private final String phase;
    private final List<Loss> losses = new ArrayList<>();

    private LossList(DepotPlan plan, String phase) {
        this.plan = plan;
        this.phase = phase;
    }

    /**
     * Chargers first, then packs, then late crews.
     *
     * @param phase id of the phase that the plan is for, empty: there is only one
     */
    static List<Loss> of(Losses asked, DepotPlan plan, String phase) {
        LossList list = new LossList(plan, phase);
        if (asked.chargersOut()) {
            list.addChargers();
        }
        asked.onePackIn().ifPresent(list::addPacks);
        if (!plan.days().isEmpty()) {
            asked.lateMinutes().ifPresent(list::addLate);
        }
        return List.copyOf(list.losses);
    }

    /** What makes two chargers alike: losing either comes to the same. */
    private record Place(String circuit, String type, boolean shared, boolean priority) {
        static Place of(ChargerPlacement charger) {
            return new Place(charger.circuit(), charger.chargerType(), charger.shared(), charger.priority());
        }
    }

    private void addChargers() {
        Map<Place, ChargerPlacement> last = new LinkedHashMap<>();
        plan.chargers().forEach(charger -> last.put(Place.of(charger), charger));
        last.forEach((place, charger) -> {
            List<ChargerPlacement> left = plan.chargers().stream()
                    .filter(other -> !other.equals(charger))
                    .toList();
            losses.add(new Loss(
                    plan.depot(),
                    phase,
                    Kind.CHARGER_OUT,
                    "1 %s on circuit %s%s"
                            .formatted(place.type(), place.circuit(), place.priority() ? ", priority outlet" : ""),
                    with(left, plan.packs()),
                    List.of(new Owned(plan.depot(), Optional.empty(), Optional.empty(), place.type(), 1)),
                    List.of()));
        });
    }

    private void addPacks(int oneIn) {
        List<PackStock> left = new ArrayList<>();
        List<Owned> lost = new ArrayList<>();
        Map<String, Integer> byType = new LinkedHashMap<>();
        for (PackStock stock : plan.packs()) {
            int gone = -Math.floorDiv(-stock.count(), oneIn);
            lost.add(new Owned(
                    plan.depot(), Optional.empty(), Ownership.ownerOf(plan, stock.pool()), stock.packType(), gone));
            byType.merge(stock.packType(), gone, Integer::sum);
            left.add(new PackStock(
                    stock.pool(),
                    stock.packType(),
                    stock.count() - gone,
                    Math.min(stock.owned(), stock.count() - gone),
                    stock.replacedPerYear()));
        }
        if (!lost.isEmpty()) {
            List<String> words = new ArrayList<>();
            byType.forEach((type, count) -> words.add(count + " " + type));
            losses.add(new Loss(
                    plan.depot(),
                    phase,
                    Kind.PACKS_LOST,
                    "1 pack in %d: %s".formatted(oneIn, String.join(", ", words)),
                    with(plan.chargers(), left),
                    List.copyOf(lost),
                    List.of()));
        }
    }

    private void addLate(int minutes) {
        losses.add(new Loss(
                plan.depot(),
                phase,
                Kind.LATE_RETURN,
                "all crews back %d min late".formatted(minutes),
                plan,
                List.of(),
                List.of(LossChanges.late(minutes))));
    }

    private DepotPlan with(List<ChargerPlacement> chargers, List<PackStock> packs) {
        return new DepotPlan(
                plan.depot(),
                plan.phase(),
                plan.stop(),
                plan.guests(),
                plan.away(),
                plan.onPetrol(),
                plan.supplyUpgraded(),
                plan.circuitsBuilt(),
                plan.units(),
                chargers,
                plan.banks(),
                List.copyOf(packs),
                plan.kits(),
                plan.moves(),
                plan.days(),
                plan.costs());
    }
}
