package depot.optimizer.advice;

import depot.optimizer.advice.Loosening.Limit;
import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.change.Change;
import depot.optimizer.sweep.change.Changes;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lists the limits of a depot, each loosened by the least that can matter: one piece, one ampere, for stays at the depot one step of the handovers,
 * since times are rounded to them.
 */
final class Loosenings {

    private final Scenario scenario;
    private final DepotPlan plan;
    private final List<Loosening> loosenings = new ArrayList<>();

    private Loosenings(Scenario scenario, DepotPlan plan) {
        this.scenario = scenario;
        this.plan = plan;
    }

    /** The limits: circuit by circuit, then those of the depot, its chargers and its crews. Circuits that are not there are left out. */
    static List<Loosening> of(Scenario scenario, DepotPlan plan) {
        Loosenings list = new Loosenings(scenario, plan);
        list.addCircuits();
        list.add(Limit.SUPPLY_AMPS, ChangeKind.SUPPLY_AMPS);
        list.add(Limit.PLACES, ChangeKind.PLACES);
        list.addBays();
        list.addLunch();
        list.addPackPlaces();
        return List.copyOf(list.loosenings);
    }

    private void addCircuits() {
        for (Circuit circuit : scenario.circuits()) {
            boolean here = circuit.depot().equals(plan.depot());
            boolean there = !circuit.candidate() || plan.circuitsBuilt().contains(circuit.id());
            if (here && there) {
                Change amp = new Change(ChangeKind.CIRCUIT_AMPS, circuit.id(), BigDecimal.ONE);
                loosenings.add(new Loosening(Limit.CIRCUIT_AMPS, circuit.id(), 1, Changes.apply(scenario, amp)));
                loosenings.add(
                        new Loosening(Limit.OUTLETS, circuit.id(), 1, Variants.oneMoreOutlet(scenario, circuit)));
            }
        }
    }

    private void add(Limit limit, ChangeKind kind) {
        Change one = new Change(kind, plan.depot(), BigDecimal.ONE);
        loosenings.add(new Loosening(limit, plan.depot(), 1, Changes.apply(scenario, one)));
    }

    private void addBays() {
        for (ChargerType type : scenario.chargerTypes()) {
            boolean used =
                    plan.chargers().stream().map(ChargerPlacement::chargerType).anyMatch(type.id()::equals);
            if (used) {
                loosenings.add(new Loosening(Limit.BAYS, type.id(), 1, Variants.oneMoreBay(scenario, type)));
            }
        }
    }

    /** All crews of the depot that come back for lunch and whose next stop leaves them the time. */
    private void addLunch() {
        int step = scenario.solve().handoverMinutes();
        Scenario changed = scenario;
        for (Crew crew : scenario.crews()) {
            if (crew.depot().equals(plan.depot()) && !elsewhere(crew)) {
                Change more = new Change(ChangeKind.LUNCH_MINUTES, crew.id(), BigDecimal.valueOf(step));
                Scenario longer = Changes.apply(changed, more);
                changed = sound(longer, crew) ? longer : changed;
            }
        }
        if (!changed.equals(scenario)) {
            loosenings.add(new Loosening(Limit.LUNCH_MINUTES, plan.depot(), step, changed));
        }
    }

    /** Whether a crew may also work from another depot, or stops at one: its times are that depot's as well. */
    private boolean elsewhere(Crew crew) {
        return scenario.basesOf(crew).size() > 1
                || scenario.visits().stream().anyMatch(stop -> stop.crew().equals(crew.id()));
    }

    /** Whether a crew still arrives at every stop after leaving the one before. */
    private static boolean sound(Scenario changed, Crew crew) {
        for (RouteStop stop : changed.stops()) {
            Optional<RouteStop> next = changed.stops().stream()
                    .filter(other -> other.crew().equals(crew.id())
                            && other.season().equals(stop.season())
                            && other.stop() > stop.stop()
                            && other.days().stream().anyMatch(stop.days()::contains))
                    .min((a, b) -> Integer.compare(a.stop(), b.stop()));
            boolean late =
                    next.map(other -> other.arriveMinute() < stop.leaveMinute()).orElse(false);
            if (stop.crew().equals(crew.id()) && late) {
                return false;
            }
        }
        return true;
    }

    private void addPackPlaces() {
        loosenings.add(
                new Loosening(Limit.PACK_PLACES, plan.depot(), 1, Variants.oneMorePackPlace(scenario, plan.depot())));
    }
}
