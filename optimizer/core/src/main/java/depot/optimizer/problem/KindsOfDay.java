package depot.optimizer.problem;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
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

/** Sorts the season days of a depot into kinds that are planned alike. */
final class KindsOfDay {

    private final Scenario scenario;
    private final Routes routes;

    KindsOfDay(Scenario scenario) {
        this.scenario = scenario;
        routes = new Routes(scenario);
    }

    /** A time at which packs may be moved before a minute. */
    int roundedDown(int minute) {
        int step = scenario.solve().handoverMinutes();
        return Math.floorDiv(minute, step) * step;
    }

    /** A time at which packs may be moved after a minute. */
    int roundedUp(int minute) {
        int step = scenario.solve().handoverMinutes();
        return -Math.floorDiv(-minute, step) * step;
    }

    /** Earliest departure of any crew that could work from a depot in some phase, on any day; 0 where there is none. */
    int start(Depot depot) {
        int earliest = Integer.MAX_VALUE;
        for (SeasonDay day : seasonDays()) {
            for (Crew crew : mayHave(depot)) {
                for (Trip trip : routes.trips(crew, day)) {
                    earliest = Math.min(earliest, trip.departure());
                }
            }
        }
        return earliest == Integer.MAX_VALUE ? 0 : earliest;
    }

    /** Crews that could work from a depot in some phase. */
    List<Crew> mayHave(Depot depot) {
        return scenario.crews().stream()
                .filter(crew -> scenario.basesOf(crew).contains(depot.id()))
                .toList();
    }

    /** The kinds of day as they are before it is known who visits whom. */
    List<DayKind> withoutVisits(Depot depot, List<Crew> crews) {
        List<Circuit> circuits = scenario.circuits().stream()
                .filter(circuit -> circuit.depot().equals(depot.id()))
                .toList();
        return of(depot, crews, new GridDay(scenario, depot, circuits), day -> List.of(), day -> List.of());
    }

    /**
     * The kinds of day.
     *
     * @param crews that may work from the depot with packs
     * @param visits that they make elsewhere, by season day
     * @param guests visits of other crews, by season day
     */
    List<DayKind> of(
            Depot depot,
            List<Crew> crews,
            GridDay grid,
            Function<SeasonDay, List<Visit>> visits,
            Function<SeasonDay, List<Visit>> guests) {
        int start = start(depot);
        Map<DayKind, List<SeasonDay>> alike = new LinkedHashMap<>();
        Map<String, Season> seasons =
                scenario.seasons().stream().collect(Collectors.toMap(Season::id, Function.identity()));
        for (SeasonDay day : seasonDays()) {
            List<Trip> trips = crews.stream()
                    .flatMap(crew -> routes.trips(crew, day).stream())
                    .filter(trip -> !trip.needs().isEmpty())
                    .sorted(Comparator.comparingInt(Trip::leaveMinute))
                    .toList();
            List<Visit> comers = guests.apply(day);
            if (!trips.isEmpty() || !comers.isEmpty()) {
                List<Integer> handovers = handovers(depot, trips, start);
                DayKind kind = new DayKind(
                        List.of(),
                        0,
                        seasons.get(day.season()).packCapacityFactor(),
                        trips,
                        visits.apply(day),
                        comers,
                        handovers,
                        grid.slices(day, DayKind.times(handovers, comers)));
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
                kind.visits(),
                kind.guests(),
                kind.handovers(),
                kind.slices())));
        return List.copyOf(kinds);
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
}
