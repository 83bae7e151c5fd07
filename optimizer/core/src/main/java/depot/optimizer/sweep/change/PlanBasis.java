package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A scenario without what no plan depends on: names, regions and places of depots on the map, and the cost of petrol of crews that have to change to
 * packs.
 */
public final class PlanBasis {
    private PlanBasis() {}

    /** The scenario without them; depots are called by their ids. */
    public static Scenario of(Scenario scenario) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        copy.crews = scenario.crews().stream()
                .map(crew -> mayStayOnPetrol(scenario, crew) ? crew : withoutPetrol(crew))
                .toList();
        copy.depots = scenario.depots().stream().map(PlanBasis::unnamed).toList();
        return copy.scenario();
    }

    private static boolean mayStayOnPetrol(Scenario scenario, Crew crew) {
        return scenario.coupling().conversionOf(crew.id()).latestPhase().isEmpty();
    }

    private static Crew withoutPetrol(Crew crew) {
        return new Crew(
                crew.id(), crew.depot(), crew.packPlaces(), crew.payloadKg(), crew.vehicleWatts(), BigDecimal.ZERO);
    }

    private static Depot unnamed(Depot depot) {
        return new Depot(
                depot.id(),
                depot.id(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                depot.tariff(),
                depot.supplyVolts(),
                depot.supplyPhases(),
                depot.supplyAmps(),
                depot.places(),
                depot.staffedFromMinute(),
                depot.staffedToMinute(),
                depot.swapMinutes(),
                depot.supplyUpgradeAmps(),
                depot.supplyUpgradeCost());
    }
}
