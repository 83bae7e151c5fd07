package depot.optimizer.replay;

import depot.optimizer.scenario.RouteStop;
import java.util.List;
import java.util.Map;

/**
 * A trip as the route has it: from an own-depot stop to the next one.
 *
 * @param trip number within the crew's day, from 1
 * @param leaveMinute not rounded
 * @param returnMinute not rounded
 * @param stops in order, without the one that it returns to; the first is the depot that it leaves
 * @param work by stop (same order) and family
 */
record TripRoute(
        String crew,
        int trip,
        int leaveMinute,
        int returnMinute,
        List<RouteStop> stops,
        List<Map<String, FamilyWork>> work) {

    /**
     * Work of one family at one stop.
     *
     * @param meanWh average energy
     * @param toolsAtOnce tools that run together, at least 1
     */
    record FamilyWork(double meanWh, int toolsAtOnce) {
        FamilyWork plus(double wattHours, int tools) {
            return new FamilyWork(meanWh + wattHours, toolsAtOnce + tools);
        }
    }

    /** Place of a stop number within the trip, -1: not on it. The stop that it returns to counts as the last. */
    int indexOf(int stopNumber) {
        for (int i = 0; i < stops.size(); i++) {
            if (stops.get(i).stop() == stopNumber) {
                return i;
            }
        }
        return -1;
    }

    boolean hasWork() {
        return work.stream().anyMatch(families -> !families.isEmpty());
    }
}
