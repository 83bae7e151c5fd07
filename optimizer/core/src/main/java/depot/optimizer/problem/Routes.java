package depot.optimizer.problem;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.problem.Trip.FamilyNeed;
import depot.optimizer.problem.Trip.TripStop;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Cuts the days of crews into trips and works out what each needs. */
final class Routes {

    private record CrewDay(String crew, SeasonDay day) {}

    private final EnergyNeed need;
    private final int rounding;
    private final Map<String, Tool> tools;
    private final Set<String> depots;
    private final Map<CrewDay, List<RouteStop>> stops = new HashMap<>();
    private final Map<CrewDay, List<Work>> work = new HashMap<>();

    Routes(Scenario scenario) {
        need = new EnergyNeed(scenario.demandQuantile(), scenario.demandSpread());
        rounding = scenario.solve().handoverMinutes();
        tools = scenario.tools().stream().collect(Collectors.toMap(Tool::id, Function.identity()));
        depots = scenario.depots().stream().map(Depot::id).collect(Collectors.toSet());
        for (RouteStop stop : scenario.stops()) {
            for (DayOfWeek day : stop.days()) {
                listAt(stops, new CrewDay(stop.crew(), new SeasonDay(stop.season(), day)))
                        .add(stop);
            }
        }
        for (Work row : scenario.work()) {
            for (DayOfWeek day : row.days()) {
                listAt(work, new CrewDay(row.crew(), new SeasonDay(row.season(), day)))
                        .add(row);
            }
        }
        stops.values().forEach(list -> list.sort(Comparator.comparingInt(RouteStop::stop)));
    }

    private static <T> List<T> listAt(Map<CrewDay, List<T>> map, CrewDay key) {
        return map.computeIfAbsent(key, k -> new ArrayList<>());
    }

    /** Trips of a crew on a day, in order; empty when it does not work. */
    List<Trip> trips(Crew crew, SeasonDay day) {
        CrewDay key = new CrewDay(crew.id(), day);
        List<RouteStop> route = stops.getOrDefault(key, List.of());
        List<Trip> trips = new ArrayList<>();
        int start = 0;
        for (int i = 1; i < route.size(); i++) {
            if (route.get(i).place().equals(crew.depot())) {
                if (i > start + 1) {
                    trips.add(trip(crew, key, trips.size() + 1, route.subList(start, i + 1)));
                }
                start = i;
            }
        }
        return trips;
    }

    private Trip trip(Crew crew, CrewDay key, int number, List<RouteStop> route) {
        int leave = route.get(0).leaveMinute();
        int back = route.get(route.size() - 1).arriveMinute();
        List<RouteStop> sites = route.subList(1, route.size() - 1);
        return new Trip(
                crew.id(),
                number,
                leave,
                back,
                Math.floorDiv(leave, rounding) * rounding,
                -Math.floorDiv(-back, rounding) * rounding,
                sites.stream()
                        .map(s -> new TripStop(s.stop(), s.arriveMinute(), s.leaveMinute(), s.siteWatts(), visited(s)))
                        .toList(),
                needs(key, sites));
    }

    /** Of the stops within a trip none is at the crew's own depot. */
    private String visited(RouteStop stop) {
        return depots.contains(stop.place()) ? stop.place() : "";
    }

    private List<FamilyNeed> needs(CrewDay key, List<RouteStop> sites) {
        List<Work> rows = work.getOrDefault(key, List.of());
        TreeSet<String> families = rows.stream()
                .filter(row -> sites.stream().anyMatch(site -> site.stop() == row.stop()))
                .map(row -> tools.get(row.tool()).family())
                .collect(Collectors.toCollection(TreeSet::new));
        return families.stream().map(family -> needOf(family, rows, sites)).toList();
    }

    private FamilyNeed needOf(String family, List<Work> rows, List<RouteStop> sites) {
        double[] means = new double[sites.size()];
        List<Double> prefixWh = new ArrayList<>();
        List<Integer> prefixTools = new ArrayList<>();
        double highest = 0;
        int most = 0;
        for (int i = 0; i < sites.size(); i++) {
            int together = 0;
            for (Work row : rows) {
                Tool tool = tools.get(row.tool());
                if (row.stop() == sites.get(i).stop() && tool.family().equals(family)) {
                    means[i] += tool.averageWatts() * row.toolHours();
                    together += row.toolsAtOnce();
                }
            }
            most = Math.max(most, means[i] > 0 ? Math.max(1, together) : together);
            // A quantile of a longer sum may be lower than that of a shorter one when the added work is small and the
            // tail is cut.
            highest = Math.max(highest, need.of(means));
            prefixWh.add(highest);
            prefixTools.add(most);
        }
        return new FamilyNeed(family, most, List.copyOf(prefixWh), List.copyOf(prefixTools));
    }
}
