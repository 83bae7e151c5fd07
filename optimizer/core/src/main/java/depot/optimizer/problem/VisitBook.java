package depot.optimizer.problem;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.problem.Trip.FamilyNeed;
import depot.optimizer.problem.Trip.TripStop;
import depot.optimizer.problem.Visit.Charge;
import depot.optimizer.problem.Visit.Service;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The visits of a scenario's crews at other depots. A visit is one where the crew works from its own depot, has stops with work before and after it,
 * and stays within a single cycle of the host's day; elsewhere it stays a stop without power.
 */
final class VisitBook {

    private final Map<String, Map<Visit, List<SeasonDay>>> byPhase = new HashMap<>();

    private VisitBook() {}

    /** All of a scenario; empty where no stop is at another depot. */
    static VisitBook of(Scenario scenario, KindsOfDay kinds) {
        VisitBook book = new VisitBook();
        if (!scenario.visits().isEmpty()) {
            List<ChargerOption> chargers = ChargerOption.mounted(scenario);
            for (Phase phase : scenario.coupling().phases()) {
                Map<Visit, List<SeasonDay>> visits = new LinkedHashMap<>();
                for (Depot home : scenario.depots()) {
                    List<Crew> crews = new PhaseCrews(scenario, home, phase).withPacks();
                    for (DayKind kind : kinds.withoutVisits(home, crews)) {
                        new Kind(scenario, kinds, chargers, home, kind).addTo(visits);
                    }
                }
                book.byPhase.put(phase.id(), visits);
            }
        }
        return book;
    }

    /** Visits of a kind of day. */
    private record Kind(Scenario scenario, KindsOfDay kinds, List<ChargerOption> chargers, Depot home, DayKind kind) {

        private void addTo(Map<Visit, List<SeasonDay>> visits) {
            for (Trip trip : kind.trips()) {
                Crew crew = scenario.crews().stream()
                        .filter(c -> c.id().equals(trip.crew()))
                        .findFirst()
                        .orElseThrow();
                for (int i = 1; i + 1 < trip.stops().size() && crew.depot().equals(home.id()); i++) {
                    if (!trip.stops().get(i).visited().isEmpty()) {
                        add(visits, crew, trip, i);
                    }
                }
            }
        }

        private void add(Map<Visit, List<SeasonDay>> visits, Crew crew, Trip trip, int place) {
            TripStop stop = trip.stops().get(place);
            int arrival = kinds.roundedUp(stop.arriveMinute());
            int departure = kinds.roundedDown(stop.leaveMinute());
            Depot host = scenario.depots().stream()
                    .filter(depot -> depot.id().equals(stop.visited()))
                    .findFirst()
                    .orElseThrow();
            int start = kinds.start(host);
            List<Charge> charges = charges(trip, place, departure - arrival);
            if (arrival >= start && departure <= start + 1440 && !charges.isEmpty()) {
                Visit visit = new Visit(
                        home.id(),
                        host.id(),
                        kind.label(),
                        crew.id(),
                        crew.packPlaces(),
                        trip.number(),
                        stop.stop(),
                        arrival,
                        departure,
                        charges);
                visits.put(visit, kind.occurrences());
            }
        }

        private List<Charge> charges(Trip trip, int place, int minutes) {
            List<Charge> charges = new ArrayList<>();
            for (PackType pack : scenario.packTypes()) {
                if (trip.needs().stream().anyMatch(need -> useful(need, pack, place))) {
                    for (ChargeLevel level : ChargeLevel.values()) {
                        if (chargers.stream().anyMatch(charger -> charges(charger, pack, level, minutes))) {
                            charges.add(new Charge(pack, level));
                        }
                    }
                }
            }
            return List.copyOf(charges);
        }

        /** Whether work of the pack's family lies before and after a stop. */
        private static boolean useful(FamilyNeed need, PackType pack, int place) {
            double before = need.prefixWh().get(place - 1);
            return need.family().equals(pack.family()) && before > 0 && need.totalWh() > before;
        }

        private static boolean charges(ChargerOption charger, PackType pack, ChargeLevel level, int minutes) {
            return minutes > 0
                    && charger.fits().stream()
                            .filter(fit -> fit.pack().equals(pack))
                            .anyMatch(fit -> charger.usefulSlots(fit, level, minutes) > 0);
        }
    }

    /** What hosts may give in a phase. */
    List<Service> services(String phase) {
        return visits(phase, visit -> true).stream()
                .flatMap(visit -> visit.services().stream())
                .toList();
    }

    /** Whether a depot is the home or the host of the visit that a limit is about. */
    boolean concerns(SharedLimit limit, Depot depot) {
        return services(limit.phase()).stream()
                .anyMatch(service ->
                        service.key().equals(limit.subject()) && service.visit().concerns(depot.id()));
    }

    /** Visits that crews of a depot make elsewhere on a day. */
    List<Visit> from(Depot home, String phase, SeasonDay day) {
        return visits(phase, visit -> visit.home().equals(home.id()) && on(phase, visit, day));
    }

    /** Visits of other crews at a depot on a day. */
    List<Visit> to(Depot host, String phase, SeasonDay day) {
        return visits(phase, visit -> visit.host().equals(host.id()) && on(phase, visit, day));
    }

    private boolean on(String phase, Visit visit, SeasonDay day) {
        return of(phase).getOrDefault(visit, List.of()).contains(day);
    }

    private List<Visit> visits(String phase, Predicate<Visit> which) {
        return of(phase).keySet().stream().filter(which).toList();
    }

    private Map<Visit, List<SeasonDay>> of(String phase) {
        return byPhase.getOrDefault(phase, Map.of());
    }
}
