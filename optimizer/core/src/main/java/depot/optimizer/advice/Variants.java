package depot.optimizer.advice;

import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import java.util.List;

/** Scenarios in which one limit is a piece larger, for those limits that sweeps do not change. */
final class Variants {
    private Variants() {}

    static Scenario oneMoreOutlet(Scenario scenario, Circuit loosened) {
        List<Circuit> circuits = scenario.circuits().stream()
                .map(circuit -> circuit.equals(loosened) ? oneMoreOutlet(circuit) : circuit)
                .toList();
        return with(scenario, circuits, scenario.chargerTypes(), scenario.crews());
    }

    private static Circuit oneMoreOutlet(Circuit circuit) {
        return new Circuit(
                circuit.id(),
                circuit.depot(),
                circuit.volts(),
                circuit.phases(),
                circuit.breakerAmps(),
                circuit.outlets() + 1,
                circuit.plugAmps(),
                circuit.continuousFactor(),
                circuit.powerFactor(),
                circuit.installCost());
    }

    static Scenario oneMoreBay(Scenario scenario, ChargerType loosened) {
        List<ChargerType> types = scenario.chargerTypes().stream()
                .map(type -> type.equals(loosened) ? oneMoreBay(type) : type)
                .toList();
        return with(scenario, scenario.circuits(), types, scenario.crews());
    }

    private static ChargerType oneMoreBay(ChargerType type) {
        return new ChargerType(
                type.id(),
                type.bays() + 1,
                type.chargingAtOnce(),
                type.plateWatts(),
                type.efficiency(),
                type.places(),
                type.portable(),
                type.weightKg(),
                type.price(),
                type.installCost(),
                type.lifeYears());
    }

    static Scenario oneMorePackPlace(Scenario scenario, String depot) {
        List<Crew> crews = scenario.crews().stream()
                .map(crew -> crew.depot().equals(depot) ? oneMorePackPlace(crew) : crew)
                .toList();
        return with(scenario, scenario.circuits(), scenario.chargerTypes(), crews);
    }

    private static Crew oneMorePackPlace(Crew crew) {
        return new Crew(
                crew.id(),
                crew.depot(),
                crew.packPlaces() + 1,
                crew.payloadKg(),
                crew.vehicleWatts(),
                crew.petrolCostPerYear());
    }

    static Scenario with(Scenario from, Coupling coupling) {
        return with(from, from.circuits(), from.chargerTypes(), from.crews(), coupling);
    }

    private static Scenario with(
            Scenario from, List<Circuit> circuits, List<ChargerType> chargerTypes, List<Crew> crews) {
        return with(from, circuits, chargerTypes, crews, from.coupling());
    }

    private static Scenario with(
            Scenario from,
            List<Circuit> circuits,
            List<ChargerType> chargerTypes,
            List<Crew> crews,
            Coupling coupling) {
        return new Scenario(
                from.name(),
                from.currency(),
                from.timeZone(),
                from.horizonYears(),
                from.discountRate(),
                from.demandQuantile(),
                from.demandSpread(),
                from.packHealth(),
                from.packSharing(),
                from.shortageCostPerKwh(),
                from.electricityPriceGrowth(),
                from.solve(),
                from.seasons(),
                from.depots(),
                circuits,
                from.baseLoads(),
                from.packTypes(),
                chargerTypes,
                from.chargeTimes(),
                from.sharingUnitTypes(),
                from.powerBankTypes(),
                from.tools(),
                crews,
                from.crewBases(),
                from.stops(),
                from.work(),
                from.priceBands(),
                from.tariffTerms(),
                from.owned(),
                coupling,
                from.finance());
    }
}
