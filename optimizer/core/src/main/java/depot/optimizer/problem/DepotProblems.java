package depot.optimizer.problem;

import depot.optimizer.finance.DepotPrices;
import depot.optimizer.finance.PresentCost;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.problem.DepotProblem.Billing;
import depot.optimizer.problem.DepotProblem.CircuitSite;
import depot.optimizer.problem.DepotProblem.MoveOffer;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.MoveCost;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Makes the sub-problems of each depot from a scenario. */
public final class DepotProblems {

    private final Scenario scenario;
    private final Routes routes;
    private final Map<String, PackType> packTypes;
    private final List<SharedLimit> limits;

    /** Prepares the parts that all depots share. */
    public DepotProblems(Scenario scenario) {
        this.scenario = scenario;
        routes = new Routes(scenario);
        packTypes = scenario.packTypes().stream().collect(Collectors.toMap(PackType::id, Function.identity()));
        limits = SharedLimits.of(scenario);
    }

    /** The depot over all phases, with the shared limits that concern it. */
    public DepotRollout rollout(Depot depot) {
        return new DepotRollout(
                scenario.coupling().phases().stream()
                        .map(phase -> of(depot, phase))
                        .toList(),
                limits.stream().filter(limit -> concerns(limit, depot)).toList());
    }

    private boolean concerns(SharedLimit limit, Depot depot) {
        return switch (limit.kind()) {
            case BUDGET, DELIVERY, QUANTITY, MOVES -> true;
            case REGION_BUDGET -> depot.region().filter(limit.subject()::equals).isPresent();
            case CREW -> mayHave(depot).stream().anyMatch(crew -> crew.id().equals(limit.subject()));
        };
    }

    /** The sub-problem of a depot in the first phase. */
    public DepotProblem of(Depot depot) {
        return of(depot, scenario.coupling().phases().get(0));
    }

    private DepotProblem of(Depot depot, Phase phase) {
        List<Circuit> circuits = scenario.circuits().stream()
                .filter(circuit -> circuit.depot().equals(depot.id()))
                .toList();
        PhaseCrews crews = new PhaseCrews(scenario, depot, phase);
        GridDay grid = new GridDay(scenario, depot, circuits);
        int start = start(mayHave(depot));
        return new DepotProblem(
                depot,
                phase.id(),
                circuits.stream()
                        .map(c -> new CircuitSite(c, grid.peakBaseAmps(c)))
                        .toList(),
                crews.withPacks(),
                crews.petrolOnly(),
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
                crews.choice(),
                crews.mobile(),
                crews.mustChange(),
                phase.equals(scenario.coupling().phases().get(0)) ? moves(depot) : List.of(),
                scenario.packHealth(),
                scenario.packSharing(),
                start,
                days(depot, crews.withPacks(), grid, start),
                billing(depot, grid, start),
                PresentCost.of(scenario, phase),
                DepotPrices.shortagePerKwh(scenario),
                scenario.shortageCostPerKwh().isEmpty(),
                crews.baseCostPerYear(),
                crews.guestSavings(),
                List.of(),
                scenario.solve());
    }

    /** Crews that could work from a depot in some phase. */
    private List<Crew> mayHave(Depot depot) {
        return scenario.crews().stream()
                .filter(crew -> scenario.basesOf(crew).contains(depot.id()))
                .toList();
    }

    private List<MoveOffer> moves(Depot depot) {
        List<MoveOffer> offers = new ArrayList<>();
        for (MoveCost move : scenario.coupling().moves()) {
            int here = 0;
            int all = 0;
            for (Owned owned : scenario.owned()) {
                if (owned.item().equals(move.item()) && owned.crew().isEmpty()) {
                    all += owned.count();
                    here += owned.depot().equals(depot.id()) ? owned.count() : 0;
                }
            }
            if (all > 0) {
                offers.add(new MoveOffer(move.item(), move.cost().doubleValue(), here, all - here));
            }
        }
        return List.copyOf(offers);
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
