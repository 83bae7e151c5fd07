package depot.optimizer.scenario;

import java.util.List;
import java.util.Optional;

/**
 * What couples the depots of a fleet: phases and their budgets, when crews change to packs, quantity prices, limits of
 * delivery, and moves of what is owned. Other bases of crews are {@link Scenario#crewBases()}, visits at other depots
 * {@link Scenario#visits()}.
 *
 * @param phases in order of time, never empty; an empty list stands for {@link Phase#NOW} alone
 * @param conversions crews that need not change in the first phase
 * @param priceTiers tiers of an item in the order of their counts
 */
public record Coupling(
        List<Phase> phases,
        List<RegionBudget> regionBudgets,
        List<CrewConversion> conversions,
        List<PriceTier> priceTiers,
        List<DeliveryLimit> deliveryLimits,
        List<MoveCost> moves) {

    /** Nothing couples the depots: all is bought now, at its own price, and nothing is moved. */
    public static final Coupling NONE = new Coupling(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Coupling {
        phases = phases.isEmpty() ? List.of(Phase.NOW) : List.copyOf(phases);
        regionBudgets = List.copyOf(regionBudgets);
        conversions = List.copyOf(conversions);
        priceTiers = List.copyOf(priceTiers);
        deliveryLimits = List.copyOf(deliveryLimits);
        moves = List.copyOf(moves);
    }

    /** A phase by its id, the first one where there is none of that id. */
    public Phase phase(String id) {
        return phases.stream()
                .filter(phase -> phase.id().equals(id))
                .findFirst()
                .orElse(phases.get(0));
    }

    /** Place of a phase in their order, from 0; -1: there is none of that id. */
    public int phaseNumber(String id) {
        return phases.stream().map(Phase::id).toList().indexOf(id);
    }

    /** Whether there is a single phase, without a limit of what it may spend. */
    public boolean singlePhase() {
        return phases.size() == 1;
    }

    /** When a crew may change to packs: as listed, else in the first phase and not later. */
    public CrewConversion conversionOf(String crew) {
        String first = phases.get(0).id();
        return conversions.stream()
                .filter(conversion -> conversion.crew().equals(crew))
                .findFirst()
                .orElseGet(() -> new CrewConversion(crew, first, Optional.of(first)));
    }
}
