package depot.optimizer.rerun;

import depot.optimizer.plan.BankPlacement;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.MovedPieces;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.UnitPlacement;
import java.util.List;

/** The equipment of a plan on its way into another one: what is not set again stays as it was. */
final class PlanParts {

    String phase;
    boolean supplyUpgraded;
    List<String> circuitsBuilt;
    List<UnitPlacement> units;
    List<ChargerPlacement> chargers;
    List<BankPlacement> banks;
    List<PackStock> packs;
    List<CrewKit> kits;
    List<MovedPieces> moves;

    private final DepotPlan from;

    PlanParts(DepotPlan from) {
        this.from = from;
        phase = from.phase();
        supplyUpgraded = from.supplyUpgraded();
        circuitsBuilt = from.circuitsBuilt();
        units = from.units();
        chargers = from.chargers();
        banks = from.banks();
        packs = from.packs();
        kits = from.kits();
        moves = from.moves();
    }

    DepotPlan plan() {
        return new DepotPlan(
                from.depot(),
                phase,
                from.stop(),
                from.guests(),
                from.away(),
                from.onPetrol(),
                supplyUpgraded,
                List.copyOf(circuitsBuilt),
                List.copyOf(units),
                List.copyOf(chargers),
                List.copyOf(banks),
                List.copyOf(packs),
                List.copyOf(kits),
                List.copyOf(moves),
                from.days(),
                from.costs());
    }
}
