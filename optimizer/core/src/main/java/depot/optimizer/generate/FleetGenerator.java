package depot.optimizer.generate;

import depot.optimizer.generate.CouplingSettings.Kind;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackSharing;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.scenario.TariffTerms;
import depot.optimizer.scenario.Work;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Makes synthetic fleets: depots that can be planned without a shortage, independent ones unless something is to couple
 * them. The same settings and seed give the same fleet; with more depots, the first ones stay as they are.
 */
public final class FleetGenerator {
    static final int HORIZON_YEARS = 8;
    static final double PACK_HEALTH = 0.85;

    /** One crew in three is at a neighbouring depot at lunch, when there are visits. */
    private static final int CREWS_PER_VISIT = 3;

    private FleetGenerator() {}

    /** Draws a fleet of independent depots. */
    public static Scenario generate(GeneratorSettings settings, long seed) {
        return generate(settings, CouplingSettings.NONE, seed);
    }

    /**
     * Draws a fleet.
     *
     * @throws IllegalArgumentException if the fleet is too small for what is to couple it
     */
    public static Scenario generate(GeneratorSettings settings, CouplingSettings coupling, long seed) {
        coupling.requireFits(settings);
        List<GeneratedDepot> depots = new ArrayList<>();
        List<GeneratedCrew> crews = new ArrayList<>();
        for (int number = 1; number <= settings.depots(); number++) {
            Dice dice = new Dice(seed, number);
            GeneratedDepot depot = GeneratedDepot.of(number, settings, dice);
            depots.add(depot);
            for (int crew = 1; crew <= settings.crewsPerDepot(); crew++) {
                boolean visits = coupling.has(Kind.VISITS) && (number + crew) % CREWS_PER_VISIT == 0;
                Optional<String> visited = visits ? Optional.of(GeneratedDepot.neighbour(number)) : Optional.empty();
                crews.add(GeneratedCrew.of(depot.depot().id(), crew, visited, settings, dice));
            }
        }
        return scenario(settings, coupling, seed, depots, crews);
    }

    private static Scenario scenario(
            GeneratorSettings settings,
            CouplingSettings coupling,
            long seed,
            List<GeneratedDepot> depots,
            List<GeneratedCrew> crews) {
        List<Depot> depotRows = depots.stream().map(GeneratedDepot::depot).toList();
        List<Circuit> circuits =
                depots.stream().flatMap(depot -> depot.circuits().stream()).toList();
        List<BaseLoad> baseLoads =
                depots.stream().flatMap(depot -> depot.baseLoads().stream()).toList();
        List<Owned> owned =
                depots.stream().flatMap(depot -> depot.owned().stream()).toList();
        List<Owned> allOwned = coupling.has(Kind.MOVES)
                ? GeneratedOrders.withSurplus(owned, depotRows, settings.crewsPerDepot())
                : owned;
        List<Crew> crewRows = crews.stream().map(GeneratedCrew::crew).toList();
        List<RouteStop> stops =
                crews.stream().flatMap(crew -> crew.stops().stream()).toList();
        List<Work> work = crews.stream().flatMap(crew -> crew.work().stream()).toList();
        Set<String> tariffs = depotRows.stream().map(Depot::tariff).collect(Collectors.toSet());
        List<PriceBand> bands = GeneratedYear.priceBands().stream()
                .filter(band -> tariffs.contains(band.tariff()))
                .toList();
        List<TariffTerms> terms = GeneratedYear.terms().stream()
                .filter(row -> tariffs.contains(row.tariff()))
                .toList();
        RoughNeed need = new RoughNeed(
                GeneratedEquipment.packTypes(settings),
                GeneratedEquipment.tools(settings),
                GeneratedYear.seasons(settings),
                work);
        List<CrewBase> bases =
                coupling.has(Kind.BASES) ? GeneratedOrders.bases(crewRows, settings.crewsPerDepot(), seed) : List.of();
        return new Scenario(
                "Synthetic fleet of %d depots, seed %d".formatted(settings.depots(), seed),
                Currency.getInstance("EUR"),
                ZoneId.of("Europe/Dublin"),
                HORIZON_YEARS,
                0.05,
                0.9,
                0.2,
                PACK_HEALTH,
                PackSharing.DEPOT,
                Optional.empty(),
                0.02,
                SolveSettings.DEFAULT,
                GeneratedYear.seasons(settings),
                depotRows,
                circuits,
                baseLoads,
                GeneratedEquipment.packTypes(settings),
                GeneratedEquipment.chargerTypes(settings),
                GeneratedEquipment.chargeTimes(settings),
                GeneratedEquipment.sharingUnitTypes(),
                List.of(),
                GeneratedEquipment.tools(settings),
                crewRows,
                bases,
                stops,
                work,
                bands,
                terms,
                allOwned,
                new GeneratedCoupling(coupling, seed, depotRows, crewRows, need).coupling(),
                GeneratedYear.finance());
    }
}
