package depot.optimizer.scenario;

import java.time.DayOfWeek;
import java.util.Set;

/**
 * Tool work at a stop.
 *
 * @param hours running time of each of the tools
 * @param toolsAtOnce how many of the tool run together; 0: one, by turns with the other tools of the stop
 */
public record Work(
        String season, Set<DayOfWeek> days, String crew, int stop, String tool, double hours, int toolsAtOnce) {

    /** Tool hours in all: {@code hours} times the tools that run, at least one. */
    public double toolHours() {
        return hours * Math.max(1, toolsAtOnce);
    }
}
