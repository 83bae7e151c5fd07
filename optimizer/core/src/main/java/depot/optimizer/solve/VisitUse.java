package depot.optimizer.solve;

import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Visit;
import depot.optimizer.problem.Visit.Service;

/** What a plan uses of what a visiting crew gets: its home what it counts on, on the day with most; its host minus what it gives, on the day with least. */
final class VisitUse {

    private VisitUse() {}

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

    private static int countedOn(DepotProblem problem, DepotPlan plan, Service service) {
        int most = 0;
        for (int d = 0; d < problem.days().size(); d++) {
            if (problem.days().get(d).visits().contains(service.visit())) {
                most = Math.max(most, countedOn(plan.days().get(d), service));
            }
        }
        return most;
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

    private static int given(DepotProblem problem, DepotPlan plan, Service service) {
        int least = Integer.MAX_VALUE;
        for (int d = 0; d < problem.days().size(); d++) {
            if (problem.days().get(d).guests().contains(service.visit())) {
                least = Math.min(least, given(plan.days().get(d), service));
            }
        }
        return least == Integer.MAX_VALUE ? 0 : least;
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
