package depot.optimizer.scenario;

import java.time.DayOfWeek;
import java.util.Set;

/**
 * One stop of a crew's day. Stops of a day are ordered by time; the first and the last are the crew's own
 * depot ({@link Crew#depot()}), which stands for its base, wherever that is.
 *
 * @param stop number of the stop within the day, rising with time
 * @param place id of a depot, or the name of a site; another depot than the crew's own is a visit
 *     ({@link Scenario#visits()})
 * @param arriveMinute minutes after midnight, up to 1800 (06:00 on the next day); the first stop's equals its leaving
 * @param leaveMinute minutes after midnight; the last stop's equals its arrival
 * @param siteWatts power of the mains on site that the crew may use while it is there, 0: none
 */
public record RouteStop(
        String season,
        Set<DayOfWeek> days,
        String crew,
        int stop,
        String place,
        int arriveMinute,
        int leaveMinute,
        double siteWatts) {}
