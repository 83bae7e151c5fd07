package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;

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
        copy.depots = scenario.depots().stream().map(Couplings::unnamed).toList();
        return copy.scenario();
    }

    private static boolean mayStayOnPetrol(Scenario scenario, Crew crew) {
        return scenario.coupling().conversionOf(crew.id()).latestPhase().isEmpty();
    }

    private static Crew withoutPetrol(Crew crew) {
        return new Crew(
                crew.id(), crew.depot(), crew.packPlaces(), crew.payloadKg(), crew.vehicleWatts(), BigDecimal.ZERO);
    }
}
