package depot.optimizer.generate;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Season;
import depot.optimizer.scenario.Work;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One synthetic crew with its routes and its work. It keeps its hours all year; its stops differ from day to day. */
record GeneratedCrew(Crew crew, List<RouteStop> stops, List<Work> work) {
    private static final int PACK_PLACES = 20;
    private static final double PAYLOAD_KG = 180;
    private static final double VEHICLE_WATTS = 420;

    GeneratedCrew {
        stops = List.copyOf(stops);
        work = List.copyOf(work);
    }

    /**
     * Draws a crew of a depot.
     *
     * @param visited another depot where it has its lunch, empty: if in a depot at all, in its own
     */
    static GeneratedCrew of(String depot, int number, Optional<String> visited, GeneratorSettings settings, Dice dice) {
        String id = "%s-crew%d".formatted(depot, number);
        double watts = dice.percent(15) ? VEHICLE_WATTS : 0;
        BigDecimal petrol = BigDecimal.valueOf(dice.stepped(1200, 3600, 100));
        Crew crew = new Crew(id, depot, PACK_PLACES, PAYLOAD_KG, watts, petrol);
        CrewHours drawn = CrewHours.draw(dice);
        CrewHours hours = visited.isPresent() ? drawn.withLunch() : drawn;
        WorkDraw tools = WorkDraw.of(settings, dice);
        List<DayRoute> routes = new ArrayList<>();
        for (Set<DayOfWeek> days : GeneratedYear.dayKinds(settings)) {
            routes.add(DayRoute.draw(days, hours, visited.orElse(depot), tools, dice));
        }
        return rows(crew, routes, GeneratedYear.seasons(settings));
    }

    private static GeneratedCrew rows(Crew crew, List<DayRoute> routes, List<Season> seasons) {
        List<RouteStop> stops = new ArrayList<>();
        List<Work> work = new ArrayList<>();
        for (Season season : seasons) {
            for (DayRoute route : routes) {
                stops.addAll(route.stops(season, crew));
                work.addAll(route.work(season, crew));
            }
        }
        return new GeneratedCrew(crew, stops, work);
    }
}
