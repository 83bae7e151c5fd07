package depot.optimizer.check;

import depot.optimizer.dictionary.DaysSyntax;
import depot.optimizer.dictionary.RouteTables.Stops;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The day of a crew: its stops by number.
 *
 * @param days the days of the week on which exactly these stops are made
 */
record Route(Crew crew, String season, Set<DayOfWeek> days, List<Located<RouteStop>> stops) {

    private record CrewSeason(String season, String crew) {}

    /** All routes; those of a crew with a broken row are left out, because a stop of theirs is missing. */
    static List<Route> all(Drafts drafts) {
        if (!drafts.table(Stops.TABLE).complete()) {
            return List.of();
        }
        Set<String> broken = drafts.inBrokenRows(Stops.TABLE, Stops.CREW);
        Map<CrewSeason, List<Located<RouteStop>>> byCrew = new LinkedHashMap<>();
        for (Located<RouteStop> stop : drafts.stops) {
            CrewSeason key = new CrewSeason(stop.value().season(), stop.value().crew());
            byCrew.computeIfAbsent(key, none -> new ArrayList<>()).add(stop);
        }
        List<Route> routes = new ArrayList<>();
        byCrew.forEach((key, stops) -> {
            Located<Crew> crew = drafts.crewsById.get(key.crew());
            if (crew != null && !broken.contains(key.crew())) {
                routes.addAll(split(crew.value(), key.season(), stops));
            }
        });
        return routes;
    }

    /** Days with the same stops are one route, so that each fault is told once. */
    private static List<Route> split(Crew crew, String season, List<Located<RouteStop>> stops) {
        List<Located<RouteStop>> sorted = new ArrayList<>(stops);
        sorted.sort(Comparator.comparingInt(stop -> stop.value().stop()));
        Map<List<Integer>, Set<DayOfWeek>> daysByLines = new LinkedHashMap<>();
        Map<List<Integer>, List<Located<RouteStop>>> stopsByLines = new LinkedHashMap<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            List<Located<RouteStop>> ofDay = sorted.stream()
                    .filter(stop -> stop.value().days().contains(day))
                    .toList();
            if (!ofDay.isEmpty()) {
                List<Integer> lines =
                        ofDay.stream().map(stop -> stop.row().line()).toList();
                daysByLines
                        .computeIfAbsent(lines, none -> EnumSet.noneOf(DayOfWeek.class))
                        .add(day);
                stopsByLines.put(lines, ofDay);
            }
        }
        return stopsByLines.entrySet().stream()
                .map(entry -> new Route(crew, season, daysByLines.get(entry.getKey()), entry.getValue()))
                .toList();
    }

    Located<RouteStop> first() {
        return stops.get(0);
    }

    Located<RouteStop> last() {
        return stops.get(stops.size() - 1);
    }

    boolean atOwnDepot(Located<RouteStop> stop) {
        return stop.value().place().equals(crew.depot());
    }

    /** Which route it is, in messages. */
    String words() {
        return crew.id() + " in " + season + " on " + DaysSyntax.text(days);
    }
}
