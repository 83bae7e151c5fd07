package depot.optimizer.rerun;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import java.util.HashMap;
import java.util.Map;

/** What guests get at a depot on a day, and what its own crews count on elsewhere. */
final class DayVisits {

    /** Packs of a guest in the bays of the depot, brought and collected at some minutes. */
    private record Guest(String crew, String packType, Level level, int from, int to) {}

    /** Packs of one of the depot's crews in bays of another, at a stop of a trip. */
    private record Stay(String crew, int trip, int stop, String packType, RoadSource level) {}

    private final Map<Guest, Integer> given = new HashMap<>();
    private final Map<Stay, Integer> countedOn = new HashMap<>();

    private DayVisits(DepotPlan plan, DayPlan day) {
        for (ChargerLoad load : day.loads()) {
            for (Loaded packs : load.packs()) {
                if (plan.visitor(packs.pool())) {
                    given.merge(
                            new Guest(
                                    packs.pool(),
                                    packs.packType(),
                                    packs.level(),
                                    load.loadMinute(),
                                    load.collectMinute()),
                            packs.count(),
                            Integer::sum);
                }
            }
        }
        for (TripPlan trip : day.trips()) {
            for (RoadCharge charge : trip.roadCharges()) {
                if (charge.source().atAnotherDepot()) {
                    countedOn.merge(
                            new Stay(trip.crew(), trip.trip(), charge.afterStop(), charge.packType(), charge.source()),
                            charge.packs(),
                            Integer::sum);
                }
            }
        }
    }

    /** Whether other depots can do as they do when an old day is put in place of a plan's: guests get as much, and crews count on no more. */
    static boolean kept(DepotPlan plan, DayPlan day, DayPlan then) {
        DayVisits now = new DayVisits(plan, day);
        DayVisits old = new DayVisits(plan, then);
        return now.given.equals(old.given)
                && old.countedOn.entrySet().stream()
                        .allMatch(packs -> now.countedOn.getOrDefault(packs.getKey(), 0) >= packs.getValue());
    }
}
