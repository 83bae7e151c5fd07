package depot.optimizer.replay;

import depot.optimizer.plan.CrewKit;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.Carried;
import depot.optimizer.plan.TripPlan.Shortage;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import java.util.HashSet;
import java.util.Set;

/** Trips follow the route, lie in the cycle, and crews carry enough packs for their tools within places and payload. */
final class TripRules {
    private final DepotTables tables;
    private final DepotPlan plan;
    private final Violations violations;

    private TripRules(DepotTables tables, DepotPlan plan, Violations violations) {
        this.tables = tables;
        this.plan = plan;
        this.violations = violations;
    }

    static void check(DepotTables tables, DepotPlan plan, DayCase day, Violations violations) {
        TripRules rules = new TripRules(tables, plan, violations);
        rules.followRoute(day);
        for (DayCase.Trip trip : day.trips()) {
            rules.times(trip);
            rules.packsOnBoard(trip);
            trip.needs().forEach(need -> rules.toolsAtOnce(trip, need));
        }
    }

    private void followRoute(DayCase day) {
        Set<String> planned = new HashSet<>();
        for (TripPlan trip : day.plan().trips()) {
            String name = trip.crew() + " trip " + trip.trip();
            if (!planned.add(name)) {
                violations.add(Kind.TRIP, name, name + " is planned twice");
            }
            if (day.trips().stream().noneMatch(t -> t.name().equals(name))) {
                violations.add(Kind.TRIP, name, name + " is not in the route");
            }
        }
        for (DayCase.Trip trip : day.trips()) {
            if (trip.route().hasWork() && !planned.contains(trip.name())) {
                violations.add(Kind.TRIP, trip.name(), trip.name() + " of the route is not planned");
            }
        }
    }

    private void times(DayCase.Trip trip) {
        TripRoute route = trip.route();
        TripPlan planned = trip.plan();
        if (planned.leaveMinute() != route.leaveMinute() || planned.returnMinute() != route.returnMinute()) {
            violations.add(
                    Kind.TRIP,
                    trip.name(),
                    trip.name() + " is planned from " + Violations.clock(planned.leaveMinute()) + " to "
                            + Violations.clock(planned.returnMinute()) + ", but the route says "
                            + Violations.clock(route.leaveMinute()) + " to "
                            + Violations.clock(route.returnMinute()));
        }
        int back = tables.roundUp(route.returnMinute());
        if (back > tables.endMinute()) {
            violations.add(
                    Kind.CYCLE,
                    trip.name(),
                    route.returnMinute(),
                    back,
                    tables.endMinute(),
                    trip.name() + " comes back at " + Violations.clock(route.returnMinute())
                            + ", after the next day's start at " + Violations.clock(tables.endMinute()));
        }
    }

    private void packsOnBoard(DayCase.Trip trip) {
        int packs = 0;
        double weight = kitWeight(trip.crew().id());
        for (Carried carried : trip.plan().carried()) {
            PackType type = tables.packTypes().get(carried.packType());
            if (type == null) {
                violations.missing("pack type", carried.packType(), trip.name());
            }
            packs += carried.full() + carried.at80();
            weight += type == null ? 0 : (carried.full() + carried.at80()) * type.weightKg();
        }
        if (packs > trip.crew().packPlaces()) {
            violations.add(
                    Kind.PACK_PLACES,
                    trip.name(),
                    packs,
                    trip.crew().packPlaces(),
                    trip.name() + " carries " + Violations.packs(packs) + " in "
                            + trip.crew().packPlaces() + " places");
        }
        if (weight > trip.crew().payloadKg() + Tolerance.COUNT) {
            violations.add(
                    Kind.PAYLOAD,
                    trip.name(),
                    weight,
                    trip.crew().payloadKg(),
                    trip.name() + " carries " + Violations.number(weight) + " kg of packs and kit, more than "
                            + Violations.number(trip.crew().payloadKg()) + " kg");
        }
    }

    private double kitWeight(String crew) {
        double weight = 0;
        for (CrewKit kit : plan.kits()) {
            if (kit.crew().equals(crew)) {
                ChargerType charger = tables.chargerTypes().get(kit.item());
                PowerBankType bank = tables.bankTypes().get(kit.item());
                double each = charger != null ? charger.weightKg() : bank != null ? bank.weightKg() : 0;
                weight += kit.count() * each;
            }
        }
        return weight;
    }

    /** Each tool that runs at the same time needs a pack of its own; a declared shortage leaves tools idle in its share. */
    private void toolsAtOnce(DayCase.Trip trip, Needs need) {
        int packs = 0;
        for (Carried carried : trip.plan().carried()) {
            PackType type = tables.packTypes().get(carried.packType());
            if (type != null && type.family().equals(need.family())) {
                packs += carried.full() + carried.at80();
            }
        }
        double shortWh = trip.plan().shortages().stream()
                .filter(s -> s.family().equals(need.family()))
                .mapToDouble(Shortage::wattHours)
                .sum();
        double total = need.totalWh();
        double share = total > 0 ? Math.max(0, 1 - shortWh / total) : 1;
        double wanted = need.mostToolsAtOnce() * share;
        if (packs < wanted - Tolerance.COUNT) {
            violations.add(
                    Kind.TOOLS_AT_ONCE,
                    trip.name(),
                    packs,
                    wanted,
                    trip.name() + " has " + Violations.packs(packs) + " " + need.family() + ", but needs "
                            + Violations.number(wanted) + " for tools that run at once");
        }
    }
}
