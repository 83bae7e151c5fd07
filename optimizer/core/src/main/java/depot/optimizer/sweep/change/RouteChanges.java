package depot.optimizer.sweep.change;

import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import java.time.DayOfWeek;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Changes of when crews are at their depots. */
final class RouteChanges {

    private record CrewDay(String season, DayOfWeek day, String crew) {}

    /** First and last stop of a day. */
    private record Ends(int first, int last) {
        Ends with(Ends other) {
            return new Ends(Math.min(first, other.first), Math.max(last, other.last));
        }
    }

    private final Map<CrewDay, Ends> ends = new HashMap<>();
    private final Map<String, String> depots;

    private RouteChanges(ScenarioCopy copy) {
        depots = copy.crews.stream().collect(Collectors.toMap(Crew::id, Crew::depot));
        for (RouteStop stop : copy.stops) {
            for (DayOfWeek day : stop.days()) {
                ends.merge(
                        new CrewDay(stop.season(), day, stop.crew()), new Ends(stop.stop(), stop.stop()), Ends::with);
            }
        }
    }

    static void lunch(ScenarioCopy copy, Change change) {
        RouteChanges routes = new RouteChanges(copy);
        int added = change.value().intValueExact();
        copy.stops = copy.stops.stream()
                .map(stop -> change.isAbout(stop.crew()) && routes.lunch(stop)
                        ? timed(stop, stop.arriveMinute(), stop.leaveMinute() + added)
                        : stop)
                .toList();
    }

    static void lateReturn(ScenarioCopy copy, Change change) {
        RouteChanges routes = new RouteChanges(copy);
        int added = change.value().intValueExact();
        copy.stops = copy.stops.stream()
                .map(stop -> change.isAbout(stop.crew()) && routes.last(stop)
                        ? timed(stop, stop.arriveMinute() + added, stop.arriveMinute() + added)
                        : stop)
                .toList();
    }

    private boolean lunch(RouteStop stop) {
        return stop.place().equals(depots.get(stop.crew()))
                && endsOf(stop).stream().allMatch(day -> stop.stop() > day.first() && stop.stop() < day.last());
    }

    private boolean last(RouteStop stop) {
        return endsOf(stop).stream().allMatch(day -> stop.stop() == day.last());
    }

    private List<Ends> endsOf(RouteStop stop) {
        return stop.days().stream()
                .map(day -> ends.get(new CrewDay(stop.season(), day, stop.crew())))
                .toList();
    }

    private static RouteStop timed(RouteStop stop, int arrive, int leave) {
        return new RouteStop(
                stop.season(), stop.days(), stop.crew(), stop.stop(), stop.place(), arrive, leave, stop.siteWatts());
    }
}
