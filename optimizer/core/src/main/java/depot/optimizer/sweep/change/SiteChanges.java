package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import java.math.BigDecimal;

/** Changes of depots and their wiring. */
final class SiteChanges {
    private SiteChanges() {}

    static void circuitAmps(ScenarioCopy copy, Change change) {
        double added = change.value().doubleValue();
        copy.circuits = copy.circuits.stream()
                .map(circuit ->
                        circuit.id().equals(change.of()) || circuit.depot().equals(change.of())
                                ? rated(circuit, circuit.breakerAmps() + added)
                                : circuit)
                .toList();
    }

    static void supplyAmps(ScenarioCopy copy, Change change) {
        double added = change.value().doubleValue();
        copy.depots = copy.depots.stream()
                .map(depot -> change.isAbout(depot.id())
                        ? with(depot, depot.supplyAmps() + added, depot.places(), depot.supplyUpgradeCost())
                        : depot)
                .toList();
    }

    static void places(ScenarioCopy copy, Change change) {
        int added = change.value().intValueExact();
        copy.depots = copy.depots.stream()
                .map(depot -> change.isAbout(depot.id())
                        ? with(depot, depot.supplyAmps(), depot.places() + added, depot.supplyUpgradeCost())
                        : depot)
                .toList();
    }

    private static Circuit rated(Circuit circuit, double amps) {
        return new Circuit(
                circuit.id(),
                circuit.depot(),
                circuit.volts(),
                circuit.phases(),
                amps,
                circuit.outlets(),
                circuit.plugAmps(),
                circuit.continuousFactor(),
                circuit.powerFactor(),
                circuit.installCost());
    }

    /** The depot with another supply, number of places and price of the bigger supply. */
    static Depot with(Depot depot, double supplyAmps, int places, BigDecimal upgradeCost) {
        return new Depot(
                depot.id(),
                depot.name(),
                depot.region(),
                depot.latitude(),
                depot.longitude(),
                depot.tariff(),
                depot.supplyVolts(),
                depot.supplyPhases(),
                supplyAmps,
                places,
                depot.staffedFromMinute(),
                depot.staffedToMinute(),
                depot.swapMinutes(),
                depot.supplyUpgradeAmps(),
                upgradeCost);
    }
}
