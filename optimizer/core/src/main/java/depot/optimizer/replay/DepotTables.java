package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.ChargeTime;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PackSharing;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.TariffTerms;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The scenario as one depot sees it, by id. Maps keep the order of the tables. */
record DepotTables(
        Scenario scenario,
        Depot depot,
        Map<String, Circuit> circuits,
        Map<String, Crew> crews,
        Map<String, Season> seasons,
        Map<String, PackType> packTypes,
        Map<String, ChargerType> chargerTypes,
        Map<String, SharingUnitType> unitTypes,
        Map<String, PowerBankType> bankTypes,
        Map<Pair, ChargeTime> chargeTimes,
        Optional<TariffTerms> terms,
        BaseLoads baseLoads,
        RouteBook routes,
        GuestBook guests,
        int startMinute,
        Phase phase,
        Set<String> onPetrol) {

    /** A charger type and a pack type. */
    record Pair(String chargerType, String packType) {}

    /** As the depot has them in the phase of a plan; empty when the scenario does not have the depot. */
    static Optional<DepotTables> of(Scenario s, DepotPlan plan) {
        return s.depots().stream()
                .filter(d -> d.id().equals(plan.depot()))
                .findFirst()
                .map(depot -> of(s, depot, plan));
    }

    private static DepotTables of(Scenario s, Depot depot, DepotPlan plan) {
        String id = depot.id();
        List<Crew> crews = plan.crews(s);
        Map<String, Circuit> circuits =
                index(s.circuits().stream().filter(c -> c.depot().equals(id)).toList(), Circuit::id);
        RouteBook routes = new RouteBook(s, crews);
        // A day begins with the first departure of any crew that could be there, so that it begins alike in all phases.
        RouteBook possible = new RouteBook(
                s, s.crews().stream().filter(c -> s.basesOf(c).contains(id)).toList());
        return new DepotTables(
                s,
                depot,
                circuits,
                index(crews, Crew::id),
                index(s.seasons(), Season::id),
                index(s.packTypes(), PackType::id),
                index(s.chargerTypes(), ChargerType::id),
                index(s.sharingUnitTypes(), SharingUnitType::id),
                index(s.powerBankTypes(), PowerBankType::id),
                index(s.chargeTimes(), t -> new Pair(t.chargerType(), t.packType())),
                s.tariffTerms().stream()
                        .filter(t -> t.tariff().equals(depot.tariff()))
                        .findFirst(),
                new BaseLoads(
                        depot,
                        circuits.values(),
                        s.baseLoads().stream().filter(b -> b.depot().equals(id)).toList()),
                routes,
                new GuestBook(s, id, index(crews, Crew::id).keySet()),
                possible.cycleStart(s.solve().handoverMinutes()),
                s.coupling().phase(plan.phase()),
                new LinkedHashSet<>(plan.onPetrol()));
    }

    private static <K, V> Map<K, V> index(List<V> rows, Function<V, K> key) {
        Map<K, V> map = new LinkedHashMap<>();
        rows.forEach(row -> map.putIfAbsent(key.apply(row), row));
        return map;
    }

    int endMinute() {
        return startMinute + BaseLoads.DAY;
    }

    int roundDown(int minute) {
        int step = scenario.solve().handoverMinutes();
        return Math.floorDiv(minute, step) * step;
    }

    int roundUp(int minute) {
        int step = scenario.solve().handoverMinutes();
        return -Math.floorDiv(-minute, step) * step;
    }

    /** The pool that a crew takes its packs from. */
    String pool(String crew) {
        return scenario.packSharing() == PackSharing.DEPOT ? depot.id() : crew;
    }

    /** Whether a pool is one of the depot's, and not a visiting crew. */
    boolean ownPool(String pool) {
        return scenario.packSharing() == PackSharing.DEPOT ? pool.equals(depot.id()) : crews.containsKey(pool);
    }

    /** Energy that a tool gets out of a full pack: planned health and the season's temperature counted in. */
    double usableWh(PackType pack, Season season) {
        return pack.capacityWh() * pack.usableShare() * scenario.packHealth() * season.packCapacityFactor();
    }

    Optional<ChargeCurve> curve(ChargerType charger, PackType pack) {
        return Optional.ofNullable(chargeTimes.get(new Pair(charger.id(), pack.id())))
                .map(time -> ChargeCurve.of(charger, pack, time));
    }
}
