package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A scenario with other tables of what its depots share and own. */
public final class Couplings {
    private Couplings() {}

    /** The scenario with other phases, budgets and so on, over another horizon. */
    public static Scenario of(Scenario scenario, Coupling coupling, int horizonYears) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        copy.coupling = coupling;
        copy.horizonYears = horizonYears;
        return copy.scenario();
    }

    /** The scenario with other rows of what is owned. */
    public static Scenario owning(Scenario scenario, List<Owned> owned) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        copy.owned = owned;
        return copy.scenario();
    }

    /** The scenario without offers of supplies that are no bigger than what is there. */
    public static Scenario withoutSpentOffers(Scenario scenario) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        copy.depots = scenario.depots().stream()
                .map(depot -> depot.upgradeOffered()
                        ? depot
                        : with(
                                depot,
                                depot.name(),
                                depot.region(),
                                depot.latitude(),
                                depot.longitude(),
                                0,
                                BigDecimal.ZERO))
                .toList();
        return copy.scenario();
    }

    /** The scenario without names of depots and their places on the map, on which no plan depends. */
    public static Scenario unnamed(Scenario scenario) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        copy.depots = scenario.depots().stream().map(Couplings::unnamed).toList();
        return copy.scenario();
    }

    /** The depot without its name, region and place on the map. */
    static Depot unnamed(Depot depot) {
        return with(
                depot,
                depot.id(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                depot.supplyUpgradeAmps(),
                depot.supplyUpgradeCost());
    }

    private static Depot with(
            Depot depot,
            String name,
            Optional<String> region,
            OptionalDouble latitude,
            OptionalDouble longitude,
            double upgradeAmps,
            BigDecimal upgradeCost) {
        return new Depot(
                depot.id(),
                name,
                region,
                latitude,
                longitude,
                depot.tariff(),
                depot.supplyVolts(),
                depot.supplyPhases(),
                depot.supplyAmps(),
                depot.places(),
                depot.staffedFromMinute(),
                depot.staffedToMinute(),
                depot.swapMinutes(),
                upgradeAmps,
                upgradeCost);
    }
}
