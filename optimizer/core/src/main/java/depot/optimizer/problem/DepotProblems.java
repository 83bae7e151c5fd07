package depot.optimizer.problem;

import depot.optimizer.finance.DepotPrices;
import depot.optimizer.finance.PresentCost;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.problem.DepotProblem.Billing;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes the sub-problem of each depot from a scenario. */
public final class DepotProblems {

    private final Scenario scenario;
    private final Routes routes;
    private final Map<String, PackType> packTypes;

    /** Prepares the parts that all depots share. */
    public DepotProblems(Scenario scenario) {
        this.scenario = scenario;
        routes = new Routes(scenario);
        packTypes = scenario.packTypes().stream().collect(Collectors.toMap(PackType::id, Function.identity()));
    }

    /** The sub-problem of a depot. */
    public DepotProblem of(Depot depot) {
        List<Circuit> circuits = scenario.circuits().stream()
                .filter(circuit -> circuit.depot().equals(depot.id()))
                .toList();
        List<Crew> crews = scenario.crews().stream()
                .filter(crew -> crew.depot().equals(depot.id()))
                .toList();
        GridDay grid = new GridDay(scenario, depot, circuits);
        int start = start(crews);
        return new DepotProblem(
                depot,
                circuits.stream()
                        .map(c -> new CircuitSite(c, grid.peakBaseAmps(c)))
                        .toList(),
                crews,
                scenario.packTypes(),
                scenario.chargerTypes().stream()
                        .filter(type -> !type.portable())
                        .map(this::option)
                        .filter(option -> !option.fits().isEmpty())
                        .toList(),
                scenario.chargerTypes().stream()
                        .filter(ChargerType::portable)
                        .map(this::option)
                        .filter(option -> !option.fits().isEmpty())
                        .toList(),
                scenario.sharingUnitTypes(),
                scenario.powerBankTypes(),
                scenario.owned().stream()
                        .filter(row -> row.depot().equals(depot.id()))
                        .toList(),
                scenario.seasons(),
                petrolChoice(crews),
                scenario.packHealth(),
                scenario.packSharing(),
                start,
                days(depot, crews, grid, start),
                billing(depot, grid, start),
                PresentCost.of(scenario),
                DepotPrices.shortagePerKwh(scenario),
                scenario.shortageCostPerKwh().isEmpty(),
                DepotPrices.crewBaseCostPerYear(scenario, depot),
                List.of(),
                scenario.solve());
    }

    /** Those of the crews that need not change to packs in any phase. */
    private Set<String> petrolChoice(List<Crew> crews) {
        return crews.stream()
                .map(Crew::id)
                .filter(crew ->
                        scenario.coupling().conversionOf(crew).latestPhase().isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }

    private ChargerOption option(ChargerType type) {
        return new ChargerOption(
                type,
                scenario.chargeTimes().stream()
                        .filter(time -> time.chargerType().equals(type.id()))
                        .map(time -> {
                            PackType pack = packTypes.get(time.packType());
                            double gridWh = pack.capacityWh() * pack.usableShare() / type.efficiency();
                            return new ChargerOption.Fit(pack, time.minutesTo80(), time.minutesToFull(), gridWh);
                        })
                        .toList());
    }

    private List<SeasonDay> seasonDays() {
        List<SeasonDay> days = new ArrayList<>();
        for (Season season : scenario.seasons()) {
            for (DayOfWeek day : DayOfWeek.values()) {
                days.add(new SeasonDay(season.id(), day));
            }
        }
        return days;
    }

    private int start(List<Crew> crews) {
        int earliest = Integer.MAX_VALUE;
        for (SeasonDay day : seasonDays()) {
            for (Crew crew : crews) {
                for (Trip trip : routes.trips(crew, day)) {
                    earliest = Math.min(earliest, trip.departure());
                }
            }
        }
        return earliest == Integer.MAX_VALUE ? 0 : earliest;
    }

    private List<DayKind> days(Depot depot, List<Crew> crews, GridDay grid, int start) {
        Map<DayKind, List<SeasonDay>> alike = new LinkedHashMap<>();
        Map<String, Season> seasons =
                scenario.seasons().stream().collect(Collectors.toMap(Season::id, Function.identity()));
        for (SeasonDay day : seasonDays()) {
            List<Trip> trips = crews.stream()
                    .flatMap(crew -> routes.trips(crew, day).stream())
                    .filter(trip -> !trip.needs().isEmpty())
                    .sorted(Comparator.comparingInt(Trip::leaveMinute))
                    .toList();
            if (!trips.isEmpty()) {
                List<Integer> handovers = handovers(depot, trips, start);
                DayKind kind = new DayKind(
                        List.of(),
                        0,
                        seasons.get(day.season()).packCapacityFactor(),
                        trips,
                        handovers,
                        grid.slices(day, handovers));
                alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(day);
            }
        }
        List<DayKind> kinds = new ArrayList<>();
        alike.forEach((kind, occurrences) -> kinds.add(new DayKind(
                List.copyOf(occurrences),
                occurrences.stream()
                        .mapToDouble(day -> seasons.get(day.season()).weeksPerYear())
                        .sum(),
                kind.packCapacityFactor(),
                kind.trips(),
                kind.handovers(),
                kind.slices())));
        return List.copyOf(kinds);
    }

    private static List<Integer> handovers(Depot depot, List<Trip> trips, int start) {
        TreeSet<Integer> times = new TreeSet<>(List.of(start, start + 1440));
        for (Trip trip : trips) {
            times.add(trip.departure());
            times.add(trip.arrival());
        }
        if (depot.staffedFromMinute().isPresent() && depot.staffedToMinute().isPresent()) {
            int step = depot.swapMinutes().orElse(60);
            for (int at = depot.staffedFromMinute().get();
                    at <= depot.staffedToMinute().get();
                    at += step) {
                if (at > start && at < start + 1440) {
                    times.add(at);
                }
            }
        }
        return List.copyOf(times);
    }

    private Billing billing(Depot depot, GridDay grid, int start) {
        return scenario.tariffTerms().stream()
                .filter(terms -> terms.tariff().equals(depot.tariff()))
                .findFirst()
                .map(terms -> new Billing(
                        terms.standingPerDay().doubleValue(),
                        terms.demandPricePerKwMonth().doubleValue(),
                        terms.demandMinutes(),
                        grid.peakBaseKw(start, terms.demandMinutes())))
                .orElse(new Billing(0, 0, 15, 0));
    }
}
