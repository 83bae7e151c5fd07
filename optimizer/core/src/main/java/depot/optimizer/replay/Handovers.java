package depot.optimizer.replay;

import depot.optimizer.scenario.Depot;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * When packs may be moved: departures rounded down, arrivals rounded up, every swap time of the staffed hours, and the two ends of the
 * cycle. At any other time nobody is there.
 */
final class Handovers {
    private Handovers() {}

    static NavigableSet<Integer> of(DepotTables tables, List<TripRoute> routes) {
        NavigableSet<Integer> minutes = new TreeSet<>();
        minutes.add(tables.startMinute());
        minutes.add(tables.endMinute());
        for (TripRoute route : routes) {
            minutes.add(tables.roundDown(route.leaveMinute()));
            minutes.add(tables.roundUp(route.returnMinute()));
        }
        minutes.addAll(swaps(tables));
        return minutes;
    }

    /** Staffed hours repeat each day, so those before the cycle's start are at its end. */
    private static NavigableSet<Integer> swaps(DepotTables tables) {
        NavigableSet<Integer> minutes = new TreeSet<>();
        Depot depot = tables.depot();
        if (depot.staffedFromMinute().isEmpty() || depot.staffedToMinute().isEmpty()) {
            return minutes;
        }
        int every = Math.max(1, depot.swapMinutes().orElse(BaseLoads.DAY));
        for (int t = depot.staffedFromMinute().get();
                t <= depot.staffedToMinute().get();
                t += every) {
            for (int minute = t - BaseLoads.DAY; minute <= tables.endMinute(); minute += BaseLoads.DAY) {
                if (minute >= tables.startMinute()) {
                    minutes.add(minute);
                }
            }
        }
        return minutes;
    }
}
