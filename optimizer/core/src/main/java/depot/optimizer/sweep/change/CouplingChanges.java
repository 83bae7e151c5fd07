package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PriceTier;
import depot.optimizer.scenario.RegionBudget;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Changes of what the depots share. */
final class CouplingChanges {
    private CouplingChanges() {}

    /** Another budget of the fleet in a phase. */
    static void budget(ScenarioCopy copy, Change change) {
        withPhases(
                copy,
                copy.coupling.phases().stream()
                        .map(phase -> change.isAbout(phase.id())
                                ? new Phase(phase.id(), phase.year(), Optional.of(change.value()))
                                : phase)
                        .toList());
    }

    /** Every budget that there is, of the fleet and of its regions. */
    static void budgets(ScenarioCopy copy, BigDecimal factor) {
        withPhases(
                copy,
                copy.coupling.phases().stream()
                        .map(phase -> new Phase(
                                phase.id(), phase.year(), phase.budget().map(factor::multiply)))
                        .toList());
        Coupling coupling = copy.coupling;
        copy.coupling = new Coupling(
                coupling.phases(),
                coupling.regionBudgets().stream()
                        .map(budget -> new RegionBudget(
                                budget.phase(), budget.region(), budget.budget().multiply(factor)))
                        .toList(),
                coupling.conversions(),
                coupling.priceTiers(),
                coupling.deliveryLimits(),
                coupling.moves());
    }

    /** Quantity prices of an item, or of all. */
    static void tiers(ScenarioCopy copy, Change change) {
        Coupling coupling = copy.coupling;
        copy.coupling = new Coupling(
                coupling.phases(),
                coupling.regionBudgets(),
                coupling.conversions(),
                coupling.priceTiers().stream()
                        .map(tier -> change.isAbout(tier.item())
                                ? new PriceTier(
                                        tier.item(),
                                        tier.fromCount(),
                                        tier.price().multiply(change.value()))
                                : tier)
                        .toList(),
                coupling.deliveryLimits(),
                coupling.moves());
    }

    /** What moving owned pieces costs. */
    static void moves(ScenarioCopy copy, BigDecimal factor) {
        Coupling coupling = copy.coupling;
        copy.coupling = new Coupling(
                coupling.phases(),
                coupling.regionBudgets(),
                coupling.conversions(),
                coupling.priceTiers(),
                coupling.deliveryLimits(),
                coupling.moves().stream()
                        .map(move -> new MoveCost(move.item(), move.cost().multiply(factor)))
                        .toList());
    }

    /** A crew that may change to packs when another one may. */
    static void convertLike(ScenarioCopy copy, String like, String id) {
        Coupling coupling = copy.coupling;
        List<CrewConversion> copies = coupling.conversions().stream()
                .filter(conversion -> conversion.crew().equals(like))
                .map(conversion -> new CrewConversion(id, conversion.earliestPhase(), conversion.latestPhase()))
                .toList();
        copy.coupling = new Coupling(
                coupling.phases(),
                coupling.regionBudgets(),
                Stream.concat(coupling.conversions().stream(), copies.stream()).toList(),
                coupling.priceTiers(),
                coupling.deliveryLimits(),
                coupling.moves());
    }

    /** A phase's budget; empty: it has none. */
    static OptionalDouble presentBudget(Coupling coupling, String of) {
        return coupling.phase(of).budget().stream()
                .mapToDouble(BigDecimal::doubleValue)
                .findFirst();
    }

    private static void withPhases(ScenarioCopy copy, List<Phase> phases) {
        Coupling coupling = copy.coupling;
        copy.coupling = new Coupling(
                phases,
                coupling.regionBudgets(),
                coupling.conversions(),
                coupling.priceTiers(),
                coupling.deliveryLimits(),
                coupling.moves());
    }
}
