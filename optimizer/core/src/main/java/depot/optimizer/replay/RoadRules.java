package depot.optimizer.replay;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.RouteStop;
import java.util.List;
import java.util.Optional;

/**
 * Charging on the way: each charge lies within its stop or its drive, its packs fit the chargers in the time, chargers are not in two charges
 * at once, and each source gives no more power than it has.
 */
final class RoadRules {
    private final DepotTables tables;
    private final DepotPlan plan;
    private final DayCase.Trip trip;
    private final Violations violations;

    private RoadRules(DepotTables tables, DepotPlan plan, DayCase.Trip trip, Violations violations) {
        this.tables = tables;
        this.plan = plan;
        this.trip = trip;
        this.violations = violations;
    }

    static void check(DepotTables tables, DepotPlan plan, DayCase day, Violations violations) {
        for (DayCase.Trip trip : day.trips()) {
            RoadRules rules = new RoadRules(tables, plan, trip, violations);
            for (RoadCharge charge : trip.plan().roadCharges()) {
                rules.window(charge);
                if (charge.source().atAnotherDepot()) {
                    rules.visit(charge);
                } else {
                    rules.chargersFit(charge);
                    rules.chargersInUse(charge);
                    rules.power(charge);
                }
            }
        }
    }

    private void window(RoadCharge charge) {
        TripRoute route = trip.route();
        int after = route.indexOf(charge.afterStop());
        int before = route.indexOf(charge.beforeStop());
        if (after < 0 || before <= after) {
            add(
                    charge,
                    0,
                    0,
                    "goes from stop " + charge.afterStop() + " to stop " + charge.beforeStop()
                            + ", which the trip does not have in this order");
            return;
        }
        RouteStop first = route.stops().get(after);
        boolean site = charge.source().atStop();
        int earliest = site ? first.arriveMinute() : first.leaveMinute();
        int latest = site ? first.leaveMinute() : route.stops().get(before).arriveMinute();
        if (charge.source().atAnotherDepot()) {
            earliest = tables.roundUp(earliest);
            latest = tables.roundDown(latest);
        }
        if (charge.fromMinute() < earliest || charge.toMinute() > latest) {
            add(
                    charge,
                    charge.fromMinute(),
                    earliest,
                    "lasts from " + Violations.clock(charge.fromMinute()) + " to "
                            + Violations.clock(charge.toMinute()) + ", but there is only from "
                            + Violations.clock(earliest)
                            + " to " + Violations.clock(latest));
        }
    }

    /** A crew charges at another depot while it works from its own; what that depot gives is for the fleet's rules to say. */
    private void visit(RoadCharge charge) {
        int stop = trip.route().indexOf(charge.afterStop());
        String place = stop < 0 ? "" : trip.route().stops().get(stop).place();
        boolean depot = tables.scenario().depots().stream().anyMatch(d -> d.id().equals(place));
        boolean atHome = trip.crew().depot().equals(plan.depot());
        if (!depot || place.equals(trip.crew().depot()) || !atHome) {
            add(
                    charge,
                    0,
                    0,
                    atHome
                            ? "is at stop " + charge.afterStop() + ", which is at no other depot"
                            : "is that of a crew which does not work from its own depot");
        }
    }

    private void chargersFit(RoadCharge charge) {
        if (perCharger(charge) < 1) {
            add(
                    charge,
                    charge.toMinute() - charge.fromMinute(),
                    0,
                    "has no time for a full pack, or a charger " + charge.chargerType() + " that packs "
                            + charge.packType() + " do not fit");
        }
    }

    /** Packs that one charger fills in the time of a charge: min(bays, at once * floor(L / time to full)). */
    private int perCharger(RoadCharge charge) {
        ChargerType charger = tables.chargerTypes().get(charge.chargerType());
        PackType pack = tables.packTypes().get(charge.packType());
        if (charger == null || pack == null) {
            return 0;
        }
        int length = charge.toMinute() - charge.fromMinute();
        return tables.curve(charger, pack)
                .map(curve -> Math.min(
                        charger.bays(), charger.chargingAtOnce() * Math.floorDiv(length, curve.minutesToFull())))
                .orElse(0);
    }

    private int chargers(RoadCharge charge) {
        int each = perCharger(charge);
        return each < 1 ? 0 : (charge.packs() + each - 1) / each;
    }

    /** Charges of the trip that run while the given one starts. */
    private List<RoadCharge> runningAtStart(RoadCharge charge) {
        return trip.plan().roadCharges().stream()
                .filter(c -> c.fromMinute() <= charge.fromMinute() && charge.fromMinute() < c.toMinute())
                .toList();
    }

    private void chargersInUse(RoadCharge charge) {
        int used = runningAtStart(charge).stream()
                .filter(c -> c.chargerType().equals(charge.chargerType()))
                .mapToInt(this::chargers)
                .sum();
        int carried = plan.kits().stream()
                .filter(k -> k.crew().equals(trip.crew().id()) && k.item().equals(charge.chargerType()))
                .mapToInt(CrewKit::count)
                .sum();
        if (used > carried) {
            add(
                    charge,
                    used,
                    carried,
                    "needs " + used + " chargers " + charge.chargerType() + " at once, but the crew has " + carried);
        }
    }

    private void power(RoadCharge charge) {
        double watts = runningAtStart(charge).stream()
                .filter(c -> c.source() == charge.source())
                .mapToDouble(c -> chargers(c) * plateWatts(c))
                .sum();
        double limit = sourceWatts(charge);
        if (Tolerance.above(watts, limit)) {
            add(
                    charge,
                    watts,
                    limit,
                    "needs " + Violations.number(watts) + " W, but there are " + Violations.number(limit) + " W");
        }
    }

    private double plateWatts(RoadCharge charge) {
        return Optional.ofNullable(tables.chargerTypes().get(charge.chargerType()))
                .map(ChargerType::plateWatts)
                .orElse(0.0);
    }

    private double sourceWatts(RoadCharge charge) {
        switch (charge.source()) {
            case SITE:
                int stop = trip.route().indexOf(charge.afterStop());
                return stop < 0 ? 0 : trip.route().stops().get(stop).siteWatts();
            case VEHICLE:
                return trip.crew().vehicleWatts();
            case BANK:
            default:
                return bankWatts();
        }
    }

    private double bankWatts() {
        double watts = 0;
        for (CrewKit kit : plan.kits()) {
            PowerBankType bank = tables.bankTypes().get(kit.item());
            watts += bank != null && kit.crew().equals(trip.crew().id()) ? kit.count() * bank.outputWatts() : 0;
        }
        return watts;
    }

    private void add(RoadCharge charge, double measured, double limit, String what) {
        violations.add(
                Kind.ROAD_CHARGE,
                trip.name(),
                charge.fromMinute(),
                measured,
                limit,
                "on " + trip.name() + ", the charge of " + charge.packs() + " " + charge.packType() + " from "
                        + charge.source() + " at " + Violations.clock(charge.fromMinute()) + " " + what);
    }
}
