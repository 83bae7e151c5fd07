package depot.optimizer.replay;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.replay.TripRoute.FamilyWork;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Tool;
import depot.optimizer.scenario.Work;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The trips of a depot's crews on every season day, worked out of stops and work. */
final class RouteBook {
    private final Map<SeasonDay, List<TripRoute>> trips = new LinkedHashMap<>();

    private record StopKey(String crew, int stop) {}

    RouteBook(Scenario scenario, List<Crew> crews) {
        Map<String, Crew> byId = new HashMap<>();
        crews.forEach(crew -> byId.put(crew.id(), crew));
        Map<String, Tool> tools = new HashMap<>();
        scenario.tools().forEach(tool -> tools.put(tool.id(), tool));
        List<RouteStop> stops = scenario.stops().stream()
                .filter(s -> byId.containsKey(s.crew()))
                .sorted(Comparator.comparingInt(RouteStop::stop))
                .toList();
        List<Work> work =
                scenario.work().stream().filter(w -> byId.containsKey(w.crew())).toList();
        for (Season season : scenario.seasons()) {
            for (DayOfWeek day : DayOfWeek.values()) {
                SeasonDay seasonDay = new SeasonDay(season.id(), day);
                List<TripRoute> routes = routes(seasonDay, crews, stops, work(seasonDay, work, tools));
                if (!routes.isEmpty()) {
                    trips.put(seasonDay, routes);
                }
            }
        }
    }

    /** Season days on which a crew leaves. */
    List<SeasonDay> seasonDays() {
        return List.copyOf(trips.keySet());
    }

    List<TripRoute> on(SeasonDay day) {
        return trips.getOrDefault(day, List.of());
    }

    /** Earliest departure of any day, rounded down to a handover; 0 without any trip. */
    int cycleStart(int handoverMinutes) {
        int earliest = trips.values().stream()
                .flatMap(List::stream)
                .mapToInt(TripRoute::leaveMinute)
                .min()
                .orElse(0);
        return Math.floorDiv(earliest, handoverMinutes) * handoverMinutes;
    }

    private static Map<StopKey, Map<String, FamilyWork>> work(SeasonDay day, List<Work> work, Map<String, Tool> tools) {
        Map<StopKey, Map<String, FamilyWork>> byStop = new HashMap<>();
        for (Work row : work) {
            Tool tool = tools.get(row.tool());
            if (tool == null
                    || !row.season().equals(day.season())
                    || !row.days().contains(day.day())) {
                continue;
            }
            Map<String, FamilyWork> families =
                    byStop.computeIfAbsent(new StopKey(row.crew(), row.stop()), key -> new TreeMap<>());
            FamilyWork before = families.getOrDefault(tool.family(), new FamilyWork(0, 0));
            double wattHours = tool.averageWatts() * row.hours() * Math.max(1, row.toolsAtOnce());
            families.put(tool.family(), before.plus(wattHours, row.toolsAtOnce()));
        }
        byStop.values()
                .forEach(families ->
                        families.replaceAll((family, w) -> new FamilyWork(w.meanWh(), Math.max(1, w.toolsAtOnce()))));
        return byStop;
    }

    private static List<TripRoute> routes(
            SeasonDay day, List<Crew> crews, List<RouteStop> stops, Map<StopKey, Map<String, FamilyWork>> work) {
        List<TripRoute> routes = new ArrayList<>();
        for (Crew crew : crews) {
            List<RouteStop> own = stops.stream()
                    .filter(s -> s.crew().equals(crew.id())
                            && s.season().equals(day.season())
                            && s.days().contains(day.day()))
                    .toList();
            routes.addAll(split(crew, own, work));
        }
        return routes;
    }

    /** Cuts a day at its own-depot stops. Work at a depot stop belongs to the trip that leaves it. */
    private static List<TripRoute> split(Crew crew, List<RouteStop> stops, Map<StopKey, Map<String, FamilyWork>> work) {
        List<TripRoute> trips = new ArrayList<>();
        int from = 0;
        for (int i = 1; i < stops.size(); i++) {
            if (stops.get(i).place().equals(crew.depot()) || i == stops.size() - 1) {
                List<RouteStop> part = stops.subList(from, i);
                trips.add(new TripRoute(
                        crew.id(),
                        trips.size() + 1,
                        stops.get(from).leaveMinute(),
                        stops.get(i).arriveMinute(),
                        List.copyOf(part),
                        part.stream()
                                .map(s -> work.getOrDefault(new StopKey(crew.id(), s.stop()), Map.of()))
                                .toList()));
                from = i;
            }
        }
        return trips;
    }
}
