package depot.optimizer.check;

import depot.optimizer.dictionary.OrderTables.DeliveryLimits;
import depot.optimizer.dictionary.OrderTables.Moves;
import depot.optimizer.dictionary.OrderTables.PriceTiers;
import depot.optimizer.dictionary.RolloutTables.CrewPhases;
import depot.optimizer.dictionary.RolloutTables.Phases;
import depot.optimizer.dictionary.RolloutTables.RegionBudgets;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.DeliveryLimit;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.RegionBudget;

/** Makes the records of what couples the depots out of sound rows. */
final class RolloutRecords {
    private RolloutRecords() {}

    static Phase phase(TypedRow row) {
        return new Phase(row.get(Phases.PHASE), row.get(Phases.YEAR), row.find(Phases.BUDGET));
    }

    static RegionBudget regionBudget(TypedRow row) {
        return new RegionBudget(
                row.get(RegionBudgets.PHASE), row.get(RegionBudgets.REGION), row.get(RegionBudgets.BUDGET));
    }

    /** A blank earliest phase is the first of all. */
    static CrewConversion conversion(TypedRow row, Phase first) {
        return new CrewConversion(
                row.get(CrewPhases.CREW),
                row.find(CrewPhases.EARLIEST_PHASE).orElse(first.id()),
                row.find(CrewPhases.LATEST_PHASE));
    }

    static PriceTier priceTier(TypedRow row) {
        return new PriceTier(row.get(PriceTiers.ITEM), row.get(PriceTiers.FROM_COUNT), row.get(PriceTiers.PRICE));
    }

    static DeliveryLimit deliveryLimit(TypedRow row) {
        return new DeliveryLimit(
                row.get(DeliveryLimits.ITEM), row.get(DeliveryLimits.PHASE), row.get(DeliveryLimits.COUNT));
    }

    static MoveCost moveCost(TypedRow row) {
        return new MoveCost(row.get(Moves.ITEM), row.get(Moves.COST));
    }
}
