package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

/** A scenario in which equipment and building work that plans have paid for are there already. */
public final class Existing {
    private Existing() {}

    /**
     * The scenario with these pieces in place of those that it owns, and with building work done.
     *
     * @param owned all that is owned
     * @param circuitsBuilt ids of candidate circuits that exist
     * @param suppliesUpgraded ids of depots whose supply is the bigger one
     */
    public static Scenario of(
            Scenario scenario, List<Owned> owned, Set<String> circuitsBuilt, Set<String> suppliesUpgraded) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        copy.owned = owned;
        copy.circuits = scenario.circuits().stream()
                .map(circuit -> circuitsBuilt.contains(circuit.id()) ? built(circuit) : circuit)
                .toList();
        copy.depots = scenario.depots().stream()
                .map(depot -> suppliesUpgraded.contains(depot.id()) ? supplied(depot) : depot)
                .toList();
        return copy.scenario();
    }

    private static Circuit built(Circuit circuit) {
        return new Circuit(
                circuit.id(),
                circuit.depot(),
                circuit.volts(),
                circuit.phases(),
                circuit.breakerAmps(),
                circuit.outlets(),
                circuit.plugAmps(),
                circuit.continuousFactor(),
                circuit.powerFactor(),
                BigDecimal.ZERO);
    }

    private static Depot supplied(Depot depot) {
        return SiteChanges.with(depot, depot.supplyUpgradeAmps(), depot.places(), depot.supplyUpgradeCost());
    }
}
