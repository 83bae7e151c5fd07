package depot.optimizer.solve;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Visit;
import depot.optimizer.problem.Visit.Service;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How many packs a plan's visits are for: its home counts on so many, on the day with most; its host gives so many, on the day with least. The plan may be
 * one of another problem of the same depot: days are the same where they stand for the same season days.
 */
public final class VisitUse {

    private VisitUse() {}

    /** What a plan uses of the limit of a visit: its host minus what it gives. */
    static int of(DepotProblem problem, DepotPlan plan, String key) {
        for (Service service : problem.services()) {
            if (service.key().equals(key)) {
                return countedOn(problem, plan, service);
            }
        }
        for (Service service : problem.guestServices()) {
            if (service.key().equals(key)) {
                return -given(problem, plan, service);
            }
        }
        return 0;
    }

    /** Packs that the depot's crews count on at other depots, by {@link Service#key()}; 0 where a visit is not used. */
    public static Map<String, Integer> countedOn(DepotProblem problem, DepotPlan plan) {
        Map<String, Integer> packs = new LinkedHashMap<>();
        problem.services().forEach(service -> packs.put(service.key(), countedOn(problem, plan, service)));
        return packs;
    }

    /** Packs that the depot charges for its guests, by {@link Service#key()}. */
    public static Map<String, Integer> given(DepotProblem problem, DepotPlan plan) {
        Map<String, Integer> packs = new LinkedHashMap<>();
        problem.guestServices().forEach(service -> packs.put(service.key(), given(problem, plan, service)));
        return packs;
    }

    /** Both together. */
    public static Map<String, Integer> packs(DepotProblem problem, DepotPlan plan) {
        Map<String, Integer> packs = countedOn(problem, plan);
        packs.putAll(given(problem, plan));
        return packs;
    }

    /** Whether a plan's crews count on no more than is settled, and its guests get no less; no packs where there is no entry. */
    public static boolean keeps(DepotProblem problem, DepotPlan plan, Map<String, Integer> settled) {
        return countedOn(problem, plan).entrySet().stream()
                        .allMatch(packs -> packs.getValue() <= settled.getOrDefault(packs.getKey(), 0))
                && given(problem, plan).entrySet().stream()
                        .allMatch(packs -> packs.getValue() >= settled.getOrDefault(packs.getKey(), 0));
    }

    private static int countedOn(DepotProblem problem, DepotPlan plan, Service service) {
        return days(problem, plan, kind -> kind.visits().contains(service.visit()))
                .mapToInt(day -> countedOn(day, service))
                .max()
                .orElse(0);
    }

    private static int given(DepotProblem problem, DepotPlan plan, Service service) {
        return days(problem, plan, kind -> kind.guests().contains(service.visit()))
                .mapToInt(day -> given(day, service))
                .min()
                .orElse(0);
    }

    /** Days of the plan that stand for season days of some kinds. */
    private static Stream<DayPlan> days(DepotProblem problem, DepotPlan plan, Predicate<DayKind> which) {
        Set<SeasonDay> on = problem.days().stream()
                .filter(which)
                .flatMap(kind -> kind.occurrences().stream())
                .collect(Collectors.toSet());
        return plan.days().stream().filter(day -> day.occurrences().stream().anyMatch(on::contains));
    }

    private static int countedOn(DayPlan day, Service service) {
        Visit visit = service.visit();
        RoadSource source = full(service) ? RoadSource.VISIT : RoadSource.VISIT_EIGHTY;
        int packs = 0;
        for (TripPlan trip : day.trips()) {
            if (trip.crew().equals(visit.crew()) && trip.trip() == visit.trip()) {
                for (RoadCharge charge : trip.roadCharges()) {
                    boolean same = charge.source() == source
                            && charge.afterStop() == visit.stop()
                            && charge.packType().equals(service.charge().pack().id());
                    packs += same ? charge.packs() : 0;
                }
            }
        }
        return packs;
    }

    private static int given(DayPlan day, Service service) {
        Visit visit = service.visit();
        int packs = 0;
        for (ChargerLoad load : day.loads()) {
            if (load.loadMinute() == visit.arrival() && load.collectMinute() == visit.departure()) {
                for (Loaded loaded : load.packs()) {
                    boolean same = loaded.pool().equals(visit.crew())
                            && loaded.packType().equals(service.charge().pack().id())
                            && (loaded.level() == Level.FULL) == full(service);
                    packs += same ? loaded.count() : 0;
                }
            }
        }
        return packs;
    }

    private static boolean full(Service service) {
        return service.charge().level() == ChargeLevel.FULL;
    }
}
