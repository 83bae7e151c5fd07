package depot.optimizer.replay;

import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.Shortage;
import depot.optimizer.replay.DayReplay.TripMargin;
import depot.optimizer.replay.Violation.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Keeps what the planned day tells: violations, margins, and what is drawn. */
final class PlannedDay implements DayEvents {
    private final Violations violations;
    private final double[][] watts;
    private final int[][] full;
    private final List<LoadTiming> loads = new ArrayList<>();
    private final SortedMap<String, Double> missingWh = new TreeMap<>();
    private final SortedSet<String> crewsLacking = new TreeSet<>();
    private final Map<String, Double> lackedWh = new HashMap<>();
    private TripMargin lowest;
    private double shortWh;

    PlannedDay(Violations violations, int circuits, int shelves) {
        this.violations = violations;
        this.watts = new double[circuits][BaseLoads.DAY];
        this.full = new int[shelves][BaseLoads.DAY];
    }

    double[][] watts() {
        return watts;
    }

    int[][] full() {
        return full;
    }

    List<LoadTiming> loads() {
        return loads;
    }

    SortedMap<String, Double> missingWh() {
        return missingWh;
    }

    SortedSet<String> crewsLacking() {
        return crewsLacking;
    }

    /** Null without work. */
    TripMargin lowest() {
        return lowest;
    }

    double shortWh() {
        return shortWh;
    }

    @Override
    public void packsNotThere(LoadRun load, int missing, int minute) {
        String charger = load.plan().charger();
        violations.add(
                Kind.PACKS_TO_LOAD,
                charger,
                minute,
                load.plan().packs().stream().mapToInt(p -> p.count()).sum() - missing,
                load.plan().packs().stream().mapToInt(p -> p.count()).sum(),
                missing + " of the packs to load into " + charger + " at " + Violations.clock(minute)
                        + (missing == 1
                                ? " is not there, does not fit or finds no free bay"
                                : " are not there, do not fit or find no free bay"));
    }

    @Override
    public void loadEnded(LoadRun load) {
        loads.add(new LoadTiming(
                load.plan().charger(),
                load.bench().placement().circuit(),
                load.plan().loadMinute(),
                load.readyMinute(),
                load.plan().collectMinute(),
                load.plan().packs().stream().mapToInt(p -> p.count()).sum()));
    }

    @Override
    public void loadLate(LoadRun load, int minute) {
        String circuit = load.bench().placement().circuit();
        double missing = load.missingWh();
        if (missing <= 0) {
            // Packs that never came are reported where they should have been loaded.
            return;
        }
        missingWh.merge(circuit, missing, Double::sum);
        violations.add(
                Kind.LATE,
                load.plan().charger(),
                minute,
                missing,
                0,
                "the load of " + Violations.clock(load.plan().loadMinute()) + " on circuit " + circuit + " still needs "
                        + Violations.number(missing) + " Wh, at least "
                        + (int) Math.ceil(load.bench().remainingMinutes())
                        + " minutes of feeding, when it is collected at " + Violations.clock(minute));
    }

    @Override
    public void packsNotCarried(DayCase.Trip trip, Carried planned, int missing, int minute) {
        int wanted = planned.full() + planned.at80();
        violations.add(
                Kind.PACKS_TO_CARRY,
                trip.name(),
                minute,
                wanted - missing,
                wanted,
                trip.name() + " should leave at " + Violations.clock(minute) + " with "
                        + Violations.packs(wanted) + " " + planned.packType() + ", but " + missing
                        + (missing == 1 ? " is" : " are") + " not ready");
    }

    @Override
    public void worked(DayCase.Trip trip, Needs need, int stop, double leftWh, double lackedWhHere) {
        double margin = lackedWhHere > 0 ? -lackedWhHere : leftWh;
        int number = trip.route().stops().get(stop).stop();
        if (lowest == null || margin < lowest.wattHours()) {
            lowest = new TripMargin(trip.crew().id(), trip.route().trip(), need.family(), number, margin);
        }
        if (lackedWhHere <= 0) {
            return;
        }
        double lacked = lackedWh.merge(trip.name() + " " + need.family(), lackedWhHere, Double::sum);
        double declared = trip.plan().shortages().stream()
                .filter(s -> s.family().equals(need.family()))
                .mapToDouble(Shortage::wattHours)
                .sum();
        double allowed = declared + Tolerance.ENERGY_WH + need.totalWh() * Tolerance.ENERGY_SHARE;
        // What stays within the tolerance is solver noise, not energy that somebody has to find elsewhere.
        shortWh += lackedWhHere;
        if (lacked > allowed) {
            crewsLacking.add(trip.crew().id());
            violations.add(
                    Kind.ENERGY,
                    trip.name(),
                    trip.route().stops().get(stop).leaveMinute(),
                    lacked,
                    declared,
                    trip.name() + " lacks " + Violations.number(lacked) + " Wh of " + need.family()
                            + " packs up to stop " + number + "; the plan declares " + Violations.number(declared)
                            + " Wh as short");
        }
    }

    @Override
    public void roadPacksNotEmpty(DayCase.Trip trip, RoadCharge charge, int empty) {
        crewsLacking.add(trip.crew().id());
        violations.add(
                Kind.ROAD_PACKS,
                trip.name(),
                charge.fromMinute(),
                empty,
                charge.packs(),
                trip.name() + " should recharge " + Violations.packs(charge.packs()) + " " + charge.packType()
                        + " after stop " + charge.afterStop() + ", but only " + empty
                        + (empty == 1 ? " is" : " are") + " empty by then");
    }

    @Override
    public void drawn(int index, double[] wattsByCircuit) {
        for (int c = 0; c < wattsByCircuit.length; c++) {
            watts[c][index] = wattsByCircuit[c];
        }
    }

    @Override
    public void shelved(int index, PackRoom room) {
        int s = 0;
        for (PackShelf shelf : room.shelves()) {
            Arrays.fill(full[s++], index, BaseLoads.DAY, shelf.fullCount());
        }
    }

    @Override
    public void notFull(PackShelf shelf, int missing) {
        violations.add(
                Kind.NOT_FULL,
                shelf.pool() + " " + shelf.type().id(),
                shelf.count() - missing,
                shelf.count(),
                missing + " of " + Violations.packs(shelf.count()) + " "
                        + shelf.type().id() + " of " + shelf.pool() + (missing == 1 ? " is" : " are")
                        + " not full when the next day starts");
    }
}
