package depot.optimizer.replay;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Who comes by at a depot that works from another one, on every season day. */
final class GuestBook {
    private final Map<SeasonDay, List<GuestVisit>> visits = new HashMap<>();

    /**
     * Reads the routes.
     *
     * @param own crews that work from the depot, which are no guests
     */
    GuestBook(Scenario scenario, String depot, Set<String> own) {
        Map<String, String> homes = new HashMap<>();
        for (Crew crew : scenario.crews()) {
            if (!crew.depot().equals(depot) && !own.contains(crew.id())) {
                homes.put(crew.id(), crew.depot());
            }
        }
        int step = scenario.solve().handoverMinutes();
        for (RouteStop stop : scenario.stops()) {
            if (stop.place().equals(depot) && homes.containsKey(stop.crew())) {
                GuestVisit visit = new GuestVisit(
                        stop.crew(),
                        homes.get(stop.crew()),
                        stop.stop(),
                        -Math.floorDiv(-stop.arriveMinute(), step) * step,
                        Math.floorDiv(stop.leaveMinute(), step) * step);
                for (DayOfWeek day : stop.days()) {
                    visits.computeIfAbsent(new SeasonDay(stop.season(), day), key -> new ArrayList<>())
                            .add(visit);
                }
            }
        }
        visits.values()
                .forEach(
                        list -> list.sort(Comparator.comparing(GuestVisit::crew).thenComparingInt(GuestVisit::stop)));
    }

    List<GuestVisit> on(SeasonDay day) {
        return visits.getOrDefault(day, List.of());
    }
}
