package depot.optimizer.replay;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What a crew counts on at a depot that it visits, that depot gives it, on every day: the same packs, while it is there, at least as full. */
final class VisitRules {
    private final Scenario scenario;
    private final Plan plan;
    private final Violations violations;
    private final Map<String, GuestBook> guests = new TreeMap<>();

    /** Packs of one type, full ones and all. */
    private static final class Packs {
        private int full;
        private int all;

        void add(boolean toFull, int count) {
            full += toFull ? count : 0;
            all += count;
        }
    }

    VisitRules(Scenario scenario, Plan plan, Violations violations) {
        this.scenario = scenario;
        this.plan = plan;
        this.violations = violations;
    }

    void check() {
        for (DepotPlan home : plan.depots()) {
            for (DayPlan day : home.days()) {
                day.trips().forEach(trip -> day.occurrences().forEach(on -> trip(home, trip, on)));
            }
        }
    }

    private void trip(DepotPlan home, TripPlan trip, SeasonDay on) {
        Map<Integer, Map<String, Packs>> counted = new TreeMap<>();
        for (RoadCharge charge : trip.roadCharges()) {
            if (charge.source().atAnotherDepot()) {
                counted.computeIfAbsent(charge.afterStop(), stop -> new TreeMap<>())
                        .computeIfAbsent(charge.packType(), type -> new Packs())
                        .add(charge.source() == RoadSource.VISIT, charge.packs());
            }
        }
        counted.forEach((stop, types) -> types.forEach((type, packs) -> visit(home, trip, on, stop, type, packs)));
    }

    private void visit(DepotPlan home, TripPlan trip, SeasonDay on, int stop, String type, Packs counted) {
        Packs given = new Packs();
        String hosts = "no depot";
        for (DepotPlan host : plan.depots()) {
            if (host.phase().equals(home.phase()) && !host.depot().equals(home.depot())) {
                for (GuestVisit visit : guestsOf(host.depot()).on(on)) {
                    if (visit.crew().equals(trip.crew()) && visit.stop() == stop) {
                        hosts = host.depot();
                        add(given, host, on, visit, type);
                    }
                }
            }
        }
        if (counted.full > given.full || counted.all > given.all) {
            boolean full = counted.full > given.full;
            int wanted = full ? counted.full : counted.all;
            int there = full ? given.full : given.all;
            violations.add(
                    Kind.VISIT,
                    trip.crew() + " trip " + trip.trip(),
                    there,
                    wanted,
                    "on %s %s in %s, %s counts on %d %s charged%s at stop %d, but %s charges %d"
                            .formatted(
                                    on.season(),
                                    on.day(),
                                    home.phase(),
                                    trip.crew(),
                                    wanted,
                                    type,
                                    full ? " to the full" : "",
                                    stop,
                                    hosts,
                                    there));
        }
    }

    private GuestBook guestsOf(String depot) {
        return guests.computeIfAbsent(depot, id -> new GuestBook(scenario, id, Set.of()));
    }

    private static void add(Packs given, DepotPlan host, SeasonDay on, GuestVisit visit, String type) {
        List<DayPlan> days = host.days().stream()
                .filter(day -> day.occurrences().contains(on))
                .toList();
        for (DayPlan day : days) {
            for (ChargerLoad load : day.loads()) {
                boolean there = load.loadMinute() >= visit.fromMinute() && load.collectMinute() <= visit.toMinute();
                for (Loaded loaded : load.packs()) {
                    if (there
                            && loaded.pool().equals(visit.crew())
                            && loaded.packType().equals(type)) {
                        given.add(loaded.level() == Level.FULL, loaded.count());
                    }
                }
            }
        }
    }
}
