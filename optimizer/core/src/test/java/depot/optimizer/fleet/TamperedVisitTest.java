package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Level;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.Violation.Kind;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A plan with a visit, one thing changed at a time: the replay says which rule is broken. */
class TamperedVisitTest {

    private static final Scenario SCENARIO = Planned.load(VisitsTest.pair());
    private static final Plan PLAN =
            VisitsTest.plan(VisitsTest.pair(), Method.WHOLE).plan();

    @Test
    void asItIsNothingIsBroken() {
        assertThat(VisitsTest.visits(PLAN)).hasSize(1);
        assertThat(broken(PLAN)).isEmpty();
    }

    @Test
    void theHostGivesNothing() {
        assertThat(broken(guests(load -> null))).contains(Kind.VISIT);
    }

    @Test
    void theHostGivesLess() {
        assertThat(broken(guests(load -> packs(load, "crew-2", Level.EIGHTY)))).contains(Kind.VISIT);
    }

    @Test
    void theHostGivesToSomebodyElse() {
        assertThat(broken(guests(load -> packs(load, "crew-9", Level.FULL)))).contains(Kind.VISIT, Kind.HANDOVER);
    }

    @Test
    void theHostIsNotReadyInTime() {
        assertThat(broken(guests(load -> new ChargerLoad(load.charger(), 720, 765, load.packs()))))
                .contains(Kind.HANDOVER, Kind.LATE);
    }

    @Test
    void theHostsOwnPacksAreMovedByAGuest() {
        assertThat(broken(guests(load -> packs(load, "north", Level.FULL)))).contains(Kind.HANDOVER, Kind.VISIT);
    }

    /** The charger also holds one of the host's own packs. */
    @Test
    void aGuestsLoadHoldsOtherPacks() {
        assertThat(broken(guests(load -> new ChargerLoad(
                        load.charger(),
                        load.loadMinute(),
                        load.collectMinute(),
                        List.of(load.packs().get(0), new Loaded("pack-500", "north", Level.FULL, 1))))))
                .contains(Kind.HANDOVER);
    }

    @Test
    void theCrewCountsOnMore() {
        assertThat(broken(charges(charge -> counted(charge, charge.afterStop(), 2))))
                .contains(Kind.VISIT, Kind.ROAD_PACKS);
    }

    @Test
    void theCrewChargesAtAStopThatIsNoDepot() {
        assertThat(broken(charges(charge -> counted(charge, 2, 1)))).contains(Kind.ROAD_CHARGE, Kind.VISIT);
    }

    @Test
    void theCrewTakesItsPacksTooLate() {
        assertThat(broken(charges(charge ->
                        new RoadCharge(charge.source(), 3, 4, 720, 790, "", charge.packType(), charge.packs()))))
                .contains(Kind.ROAD_CHARGE);
    }

    private static Set<Kind> broken(Plan plan) {
        var report = FleetReplay.run(SCENARIO, plan);
        return Stream.concat(
                        report.violations().stream(),
                        report.depots().stream().flatMap(depot -> depot.allViolations().stream()))
                .map(violation -> violation.kind())
                .collect(Collectors.toSet());
    }

    private static ChargerLoad packs(ChargerLoad load, String pool, Level level) {
        return new ChargerLoad(
                load.charger(),
                load.loadMinute(),
                load.collectMinute(),
                List.of(new Loaded("pack-500", pool, level, 1)));
    }

    private static RoadCharge counted(RoadCharge charge, int stop, int packs) {
        return new RoadCharge(
                charge.source(),
                stop,
                charge.beforeStop(),
                charge.fromMinute(),
                charge.toMinute(),
                charge.chargerType(),
                charge.packType(),
                packs);
    }

    /** The plan with the loads of guests changed; null: taken out. */
    private static Plan guests(UnaryOperator<ChargerLoad> change) {
        return days((depot, day) -> {
            List<ChargerLoad> loads = new ArrayList<>();
            for (ChargerLoad load : day.loads()) {
                boolean guest = VisitsTest.ofGuests(depot).contains(load);
                ChargerLoad changed = guest ? change.apply(load) : load;
                if (changed != null) {
                    loads.add(changed);
                }
            }
            return new DayPlan(
                    day.occurrences(),
                    day.daysPerYear(),
                    day.startMinute(),
                    day.trips(),
                    loads,
                    day.feeds(),
                    day.energy(),
                    day.demandKw());
        });
    }

    private static Plan charges(UnaryOperator<RoadCharge> change) {
        return days((depot, day) -> new DayPlan(
                day.occurrences(),
                day.daysPerYear(),
                day.startMinute(),
                day.trips().stream()
                        .map(trip -> new TripPlan(
                                trip.crew(),
                                trip.trip(),
                                trip.leaveMinute(),
                                trip.returnMinute(),
                                trip.carried(),
                                trip.roadCharges().stream().map(change).toList(),
                                trip.shortages()))
                        .toList(),
                day.loads(),
                day.feeds(),
                day.energy(),
                day.demandKw()));
    }

    private interface DayChange {
        DayPlan of(DepotPlan depot, DayPlan day);
    }

    private static Plan days(DayChange change) {
        return new Plan(
                PLAN.formatVersion(),
                PLAN.scenario(),
                PLAN.currency(),
                PLAN.inputHashes(),
                PLAN.solver(),
                PLAN.settings(),
                PLAN.certificate(),
                PLAN.fleetCosts(),
                PLAN.proof(),
                PLAN.depots().stream()
                        .map(depot -> depot.with(
                                depot.days().stream()
                                        .map(day -> change.of(depot, day))
                                        .toList(),
                                depot.costs()))
                        .toList());
    }
}
