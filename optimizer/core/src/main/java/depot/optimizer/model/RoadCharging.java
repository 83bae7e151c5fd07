package depot.optimizer.model;

import depot.optimizer.mip.Expr;
import depot.optimizer.mip.MipModel;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip.FamilyNeed;
import depot.optimizer.problem.Trip.TripStop;
import java.util.List;
import java.util.function.Predicate;

/**
 * On the road only packs that are empty by then are recharged, by chargers and power on board, or by the bays of a depot that the crew visits.
 *
 * <ul>
 *   <li>packs charged on a visit &lt;= services[i], what the crew counts on there
 *   <li>packs in another road load &lt;= slots * chargers of the load
 *   <li>chargers of loads that overlap &lt;= portable chargers of the crew, by type
 *   <li>plate watts of loads that overlap &lt;= site watts, vehicle watts, or output watts of the banks on board
 *   <li>energy of the recharges begun by the end of stop k &lt;= need up to k - (tools at once - 1) E of the largest pack: packs that are only partly used
 *       stay in the tools; less where a replay has found packs not empty
 *   <li>packs of a type that are being recharged &lt;= packs of that type on board
 *   <li>at a stop with work, packs on board - packs being recharged &gt;= tools at once, if the crew works with packs
 *   <li>energy taken from banks over the day &lt;= what they hold: each is recharged at the depot once a day
 * </ul>
 */
final class RoadCharging implements DayRule {

    private final Tightening tightening;

    RoadCharging(Tightening tightening) {
        this.tightening = tightening;
    }

    @Override
    public void add(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        for (TripVars trip : day.trips()) {
            if (!trip.roads().isEmpty()) {
                String key = trip.trip().crew() + "_" + trip.trip().number() + "@" + day.tag();
                addSlots(model, trip);
                addServices(model, capacity, trip);
                addChargers(model, problem, capacity, trip, key);
                addPower(model, problem, capacity, trip, key);
                addEmptied(model, trip, key);
                addOnBoard(model, trip, key);
                addInHand(model, trip, key);
            }
        }
        addBankEnergy(model, problem, capacity, day);
    }

    private static void addSlots(MipModel model, TripVars trip) {
        for (RoadLoad road : trip.roads()) {
            if (!road.visit()) {
                model.atMost(
                        "roadSlots_" + road.packs().name(),
                        new Expr().add(1, road.packs()).add(-road.slots(), road.chargers()),
                        0);
            }
        }
    }

    private static void addServices(MipModel model, CapacityVars capacity, TripVars trip) {
        for (RoadLoad road : trip.roads()) {
            if (road.visit()) {
                model.atMost(
                        "roadVisit_" + road.packs().name(),
                        new Expr().add(1, road.packs()).add(-1, capacity.services[road.service()]),
                        0);
            }
        }
    }

    private static void addChargers(
            MipModel model, DepotProblem problem, CapacityVars capacity, TripVars trip, String key) {
        for (int t = 0; t < problem.portableChargers().size(); t++) {
            int portable = t;
            for (int at : starts(trip)) {
                Expr busy = new Expr();
                overlapping(trip, at, r -> r.portable() == portable).forEach(r -> busy.add(1, r.chargers()));
                if (!busy.isEmpty()) {
                    model.atMost("roadKit_t" + t + "_" + at + "_" + key, busy.add(-1, capacity.kit[trip.crew()][t]), 0);
                }
            }
        }
    }

    private static void addPower(
            MipModel model, DepotProblem problem, CapacityVars capacity, TripVars trip, String key) {
        double vehicle = RoadPower.vehicleWatts(problem, trip.trip());
        for (int at : starts(trip)) {
            Expr car = plate(overlapping(trip, at, r -> r.source() == RoadSource.VEHICLE));
            model.atMost("vehicleWatts_" + at + "_" + key, car, vehicle);
            model.atMost(
                    "siteWatts_" + at + "_" + key,
                    plate(overlapping(trip, at, r -> r.source() == RoadSource.SITE)),
                    siteWatts(trip, at));
            for (int b = 0; b < problem.bankTypes().size(); b++) {
                int bank = b;
                Expr drawn = plate(overlapping(trip, at, r -> r.bank() == bank));
                if (!drawn.isEmpty()) {
                    drawn.add(-problem.bankTypes().get(b).outputWatts(), capacity.banks[trip.crew()][b]);
                    model.atMost("bankWatts_b" + b + "_" + at + "_" + key, drawn, 0);
                }
            }
        }
    }

    private static double siteWatts(TripVars trip, int at) {
        return trip.trip().stops().stream()
                .filter(stop -> stop.arriveMinute() <= at && at < stop.leaveMinute())
                .mapToDouble(TripStop::siteWatts)
                .max()
                .orElse(0);
    }

    private void addEmptied(MipModel model, TripVars trip, String key) {
        for (FamilyNeed need : trip.trip().needs()) {
            double largest = trip.carriedFor(need).stream()
                    .mapToDouble(TripVars.Carried::fullWh)
                    .max()
                    .orElse(0);
            for (int k = 0; k < need.prefixWh().size(); k++) {
                int upTo = k;
                Expr begun = new Expr();
                trip.roadsFor(need).stream()
                        .filter(r -> r.emptiedBy() <= upTo)
                        .forEach(r -> begun.add(trip.fullWh(r), r.packs()));
                double inTools = Math.max(0, need.prefixTools().get(k) - 1) * largest;
                double emptied = Math.max(0, need.prefixWh().get(k) - inTools);
                double share = tightening.onTheWay(trip.trip().crew());
                model.atMost("emptied_" + need.family() + "_" + k + "_" + key, begun, share * emptied);
            }
        }
    }

    private static void addOnBoard(MipModel model, TripVars trip, String key) {
        for (TripVars.Carried carried : trip.carried()) {
            for (int at : starts(trip)) {
                Expr charging = new Expr();
                overlapping(trip, at, r -> r.fit().pack().equals(carried.type()))
                        .forEach(r -> charging.add(1, r.packs()));
                if (!charging.isEmpty()) {
                    String name = "roadOnBoard_" + carried.type().id() + "_" + at + "_" + key;
                    model.atMost(name, charging.add(-1, carried.count()), 0);
                }
            }
        }
    }

    private static void addInHand(MipModel model, TripVars trip, String key) {
        for (int n = 0; n < trip.trip().needs().size(); n++) {
            FamilyNeed need = trip.trip().needs().get(n);
            for (int k = 1; k < need.prefixWh().size(); k++) {
                int stop = k;
                List<RoadLoad> away = trip.roadsFor(need).stream()
                        .filter(r -> r.emptiedBy() < stop && stop < r.servesFrom())
                        .toList();
                boolean work = need.prefixWh().get(k) > need.prefixWh().get(k - 1);
                if (work && !away.isEmpty()) {
                    int tools = need.prefixTools().get(k);
                    Expr hands = new Expr()
                            .add(tools / need.totalWh(), trip.shortWh().get(n));
                    trip.carriedFor(need).forEach(c -> hands.add(1, c.count()));
                    away.forEach(r -> hands.add(-1, r.packs()));
                    trip.need(model, "roadInHand_" + need.family() + "_" + k + "_" + key, hands, tools);
                }
            }
        }
    }

    private static void addBankEnergy(MipModel model, DepotProblem problem, CapacityVars capacity, DayVars day) {
        for (int w = 0; w < problem.crews().size(); w++) {
            for (int b = 0; b < problem.bankTypes().size(); b++) {
                Expr wh = new Expr();
                for (TripVars trip : day.trips()) {
                    for (RoadLoad road : trip.roads()) {
                        if (trip.crew() == w && road.bank() == b) {
                            wh.add(BankEnergy.takenWh(problem, road), road.packs());
                        }
                    }
                }
                if (!wh.isEmpty()) {
                    wh.add(-problem.bankTypes().get(b).energyWh(), capacity.banks[w][b]);
                    String key = problem.crews().get(w).id() + "_"
                            + problem.bankTypes().get(b).id();
                    model.atMost("bankEnergy_" + key + "@" + day.tag(), wh, 0);
                }
            }
        }
    }

    private static Expr plate(List<RoadLoad> roads) {
        Expr watts = new Expr();
        roads.forEach(r -> watts.add(r.option().type().plateWatts(), r.chargers()));
        return watts;
    }

    private static List<Integer> starts(TripVars trip) {
        return trip.roads().stream().map(RoadLoad::from).distinct().sorted().toList();
    }

    /** Loads in progress at a minute. */
    private static List<RoadLoad> overlapping(TripVars trip, int at, Predicate<RoadLoad> of) {
        return trip.roads().stream()
                .filter(of)
                .filter(r -> r.from() <= at && at < r.to())
                .toList();
    }
}
