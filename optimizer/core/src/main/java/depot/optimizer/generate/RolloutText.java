package depot.optimizer.generate;

import depot.optimizer.dictionary.OrderTables.DeliveryLimits;
import depot.optimizer.dictionary.OrderTables.Moves;
import depot.optimizer.dictionary.OrderTables.PriceTiers;
import depot.optimizer.dictionary.RolloutTables.CrewPhases;
import depot.optimizer.dictionary.RolloutTables.Phases;
import depot.optimizer.dictionary.RolloutTables.RegionBudgets;
import depot.optimizer.generate.TableText.Row;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.DeliveryLimit;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.RegionBudget;
import java.util.List;

/** Tables of what couples the depots. */
final class RolloutText {
    private RolloutText() {}

    static List<TableText> tables(Coupling coupling) {
        return List.of(
                TableText.of(Phases.TABLE, phasesToWrite(coupling), RolloutText::phase),
                TableText.of(RegionBudgets.TABLE, coupling.regionBudgets(), RolloutText::regionBudget),
                TableText.of(CrewPhases.TABLE, coupling.conversions(), RolloutText::conversion),
                TableText.of(PriceTiers.TABLE, coupling.priceTiers(), RolloutText::priceTier),
                TableText.of(DeliveryLimits.TABLE, coupling.deliveryLimits(), RolloutText::deliveryLimit),
                TableText.of(Moves.TABLE, coupling.moves(), RolloutText::moveCost));
    }

    /** The phase that a scenario has without any is only written where a row of another table names it. */
    private static List<Phase> phasesToWrite(Coupling coupling) {
        boolean named = !coupling.regionBudgets().isEmpty()
                || !coupling.conversions().isEmpty()
                || !coupling.deliveryLimits().isEmpty();
        boolean usual = coupling.phases().equals(List.of(Phase.NOW));
        return named || !usual ? coupling.phases() : List.of();
    }

    private static void phase(Row row, Phase phase) {
        row.put(Phases.PHASE, phase.id()).put(Phases.YEAR, phase.year()).put(Phases.BUDGET, phase.budget());
    }

    private static void regionBudget(Row row, RegionBudget budget) {
        row.put(RegionBudgets.PHASE, budget.phase())
                .put(RegionBudgets.REGION, budget.region())
                .put(RegionBudgets.BUDGET, budget.budget());
    }

    private static void conversion(Row row, CrewConversion conversion) {
        row.put(CrewPhases.CREW, conversion.crew())
                .put(CrewPhases.EARLIEST_PHASE, conversion.earliestPhase())
                .put(CrewPhases.LATEST_PHASE, conversion.latestPhase());
    }

    private static void priceTier(Row row, PriceTier tier) {
        row.put(PriceTiers.ITEM, tier.item())
                .put(PriceTiers.FROM_COUNT, tier.fromCount())
                .put(PriceTiers.PRICE, tier.price());
    }

    private static void deliveryLimit(Row row, DeliveryLimit limit) {
        row.put(DeliveryLimits.ITEM, limit.item())
                .put(DeliveryLimits.PHASE, limit.phase())
                .put(DeliveryLimits.COUNT, limit.count());
    }

    private static void moveCost(Row row, MoveCost move) {
        row.put(Moves.ITEM, move.item()).put(Moves.COST, move.cost());
    }
}
