package depot.optimizer.problem;

import depot.optimizer.finance.DepotPrices;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewConversion;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Who may, must or cannot work from a depot with packs in a phase. */
final class PhaseCrews {

    private final Scenario scenario;
    private final Depot depot;
    private final int phase;

    PhaseCrews(Scenario scenario, Depot depot, Phase phase) {
        this.scenario = scenario;
        this.depot = depot;
        this.phase = scenario.coupling().phaseNumber(phase.id());
    }

    /** Crews that may work from the depot with packs, those of other depots among them. */
    List<Crew> withPacks() {
        return scenario.crews().stream()
                .filter(crew -> scenario.basesOf(crew).contains(depot.id()) && mayChange(crew))
                .toList();
    }

    /** The depot's own crews that cannot change yet. */
    List<Crew> petrolOnly() {
        return scenario.crews().stream()
                .filter(crew -> own(crew) && !mayChange(crew))
                .toList();
    }

    /** Those with packs that may as well stay on petrol, or work from another depot. */
    Set<String> choice() {
        return withPacks().stream()
                .filter(crew -> !mustChange(crew) || scenario.basesOf(crew).size() > 1)
                .map(Crew::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The depot's own crews that may not stay on petrol. */
    Set<String> mustChange() {
        return withPacks().stream()
                .filter(crew -> own(crew) && mustChange(crew))
                .map(Crew::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Those with packs that have other bases. */
    Set<String> mobile() {
        return withPacks().stream()
                .filter(crew -> scenario.basesOf(crew).size() > 1)
                .map(Crew::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** What it costs a year that a crew works from the depot; those that cost nothing are left out. */
    Map<String, Double> baseCostPerYear() {
        return DepotPrices.baseCostPerYear(scenario, depot);
    }

    /** What the home of a crew of another depot no longer pays when it works from this one: its petrol, and its base there. */
    Map<String, Double> guestSavings() {
        Map<String, Double> savings = new HashMap<>();
        for (Crew crew : withPacks()) {
            if (!own(crew)) {
                Depot home = scenario.depots().stream()
                        .filter(other -> other.id().equals(crew.depot()))
                        .findFirst()
                        .orElseThrow();
                double base = DepotPrices.baseCostPerYear(scenario, home).getOrDefault(crew.id(), 0.0);
                savings.put(crew.id(), crew.petrolCostPerYear().doubleValue() + base);
            }
        }
        return Map.copyOf(savings);
    }

    private boolean own(Crew crew) {
        return crew.depot().equals(depot.id());
    }

    private CrewConversion conversion(Crew crew) {
        return coupling().conversionOf(crew.id());
    }

    private Coupling coupling() {
        return scenario.coupling();
    }

    private boolean mayChange(Crew crew) {
        return coupling().phaseNumber(conversion(crew).earliestPhase()) <= phase;
    }

    private boolean mustChange(Crew crew) {
        Optional<String> latest = conversion(crew).latestPhase();
        return latest.isPresent() && coupling().phaseNumber(latest.get()) <= phase;
    }
}
