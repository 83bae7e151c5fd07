package depot.optimizer.cli;

import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A scenario reduced to one of its depots: the others' circuits, crews, routes and equipment are left out. */
final class OneDepot {

    private OneDepot() {}

    static Scenario of(Scenario all, String id) {
        Set<String> crews = all.crews().stream()
                .filter(crew -> crew.depot().equals(id))
                .map(Crew::id)
                .collect(Collectors.toSet());
        return new Scenario(
                all.name(),
                all.currency(),
                all.timeZone(),
                all.horizonYears(),
                all.discountRate(),
                all.demandQuantile(),
                all.demandSpread(),
                all.packHealth(),
                all.packSharing(),
                all.shortageCostPerKwh(),
                all.electricityPriceGrowth(),
                all.solve(),
                all.seasons(),
                keep(all.depots(), depot -> depot.id().equals(id)),
                keep(all.circuits(), circuit -> circuit.depot().equals(id)),
                keep(all.baseLoads(), load -> load.depot().equals(id)),
                all.packTypes(),
                all.chargerTypes(),
                all.chargeTimes(),
                all.sharingUnitTypes(),
                all.powerBankTypes(),
                all.tools(),
                keep(all.crews(), crew -> crews.contains(crew.id())),
                keep(all.crewBases(), base -> crews.contains(base.crew())),
                keep(all.stops(), stop -> crews.contains(stop.crew())),
                keep(all.work(), work -> crews.contains(work.crew())),
                all.priceBands(),
                all.tariffTerms(),
                keep(all.owned(), owned -> owned.depot().equals(id)),
                coupling(all, id, crews),
                all.finance());
    }

    /** What the fleet shares stays as it is: it limits a single depot as well. */
    private static Coupling coupling(Scenario all, String id, Set<String> crews) {
        Coupling coupling = all.coupling();
        Set<String> regions = all.depots().stream()
                .filter(depot -> depot.id().equals(id))
                .flatMap(depot -> depot.region().stream())
                .collect(Collectors.toSet());
        return new Coupling(
                coupling.phases(),
                keep(coupling.regionBudgets(), budget -> regions.contains(budget.region())),
                keep(coupling.conversions(), conversion -> crews.contains(conversion.crew())),
                coupling.priceTiers(),
                coupling.deliveryLimits(),
                coupling.moves());
    }

    private static <T> List<T> keep(List<T> rows, Predicate<T> wanted) {
        return rows.stream().filter(wanted).toList();
    }
}
