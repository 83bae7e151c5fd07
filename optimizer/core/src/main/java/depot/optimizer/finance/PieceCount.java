package depot.optimizer.finance;

import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.UnitPlacement;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How many pieces of a type a depot's plan has.
 *
 * @param owned those of them that are not bought in its phase
 */
record PieceCount(int all, int owned) {

    /** Chargers, mounted and carried. */
    static PieceCount chargers(DepotPlan plan, String type) {
        List<ChargerPlacement> placed = plan.chargers().stream()
                .filter(charger -> charger.chargerType().equals(type))
                .toList();
        int owned = (int) placed.stream().filter(ChargerPlacement::owned).count();
        return carried(plan, type).plus(placed.size(), owned);
    }

    /** Portable chargers or power banks of crews. */
    static PieceCount carried(DepotPlan plan, String item) {
        List<CrewKit> kits =
                plan.kits().stream().filter(kit -> kit.item().equals(item)).toList();
        return new PieceCount(
                kits.stream().mapToInt(CrewKit::count).sum(),
                kits.stream().mapToInt(CrewKit::owned).sum());
    }

    /** Load-sharing units. */
    static PieceCount units(DepotPlan plan, String type) {
        List<UnitPlacement> units = plan.units().stream()
                .filter(unit -> unit.unitType().equals(type))
                .toList();
        int owned = (int) units.stream().filter(UnitPlacement::owned).count();
        return new PieceCount(units.size(), owned);
    }

    /** All pieces of the phase before; none before the first. */
    static int ofBefore(Optional<DepotPlan> before, Function<DepotPlan, PieceCount> count) {
        return before.map(count).map(PieceCount::all).orElse(0);
    }

    private PieceCount plus(int moreAll, int moreOwned) {
        return new PieceCount(all + moreAll, owned + moreOwned);
    }
}
