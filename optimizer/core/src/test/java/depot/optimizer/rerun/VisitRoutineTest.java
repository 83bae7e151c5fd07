package depot.optimizer.rerun;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.VisitingCrew;
import depot.optimizer.fleet.FleetPlanner;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.fleet.ProgressListener;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.TripPlan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.rerun.RoutineKeeper.Kept;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.FleetAssembly;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Old days of a home and a host: north charges a pack of south's crew at noon. */
class VisitRoutineTest {

    private static final double HUGE = 1e6;

    private static final Scenario SCENARIO = Planned.load(VisitingCrew.pair());
    private static final Plan PLAN = plan(SCENARIO);
    private static final DepotPlan NORTH = PLAN.depots().get(0);
    private static final DepotPlan SOUTH = PLAN.depots().get(1);
    private static final DayPlan HOST = NORTH.days().get(0);
    private static final DayPlan HOME = SOUTH.days().get(0);

    private static Plan plan(Scenario scenario) {
        return new FleetPlanner(ProgressListener.SILENT)
                .plan(scenario, new TreeMap<>(), Method.WHOLE)
                .plan();
    }

    private static DayPlan withoutGuests(DayPlan day) {
        List<ChargerLoad> own = day.loads().stream()
                .filter(load -> load.packs().stream().noneMatch(packs -> NORTH.visitor(packs.pool())))
                .toList();
        assertThat(own).hasSize(day.loads().size() - 1);
        return day(day, day.trips(), own);
    }

    private static DayPlan withoutVisits(DayPlan day) {
        return day(day, day.trips().stream().map(trip -> trip(trip, List.of())).toList(), day.loads());
    }

    private static TripPlan trip(TripPlan trip, List<RoadCharge> charges) {
        return new TripPlan(
                trip.crew(),
                trip.trip(),
                trip.leaveMinute(),
                trip.returnMinute(),
                trip.carried(),
                charges,
                trip.shortages());
    }

    private static DayPlan day(DayPlan day, List<TripPlan> trips, List<ChargerLoad> loads) {
        return new DayPlan(
                day.occurrences(),
                day.daysPerYear(),
                day.startMinute(),
                trips,
                loads,
                day.feeds(),
                day.energy(),
                day.demandKw());
    }

    @Test
    void guestsGetAsMuchOnAnOldDay() {
        assertThat(DayVisits.kept(NORTH, HOST, HOST)).isTrue();
        assertThat(DayVisits.kept(NORTH, HOST, withoutGuests(HOST))).isFalse();
        assertThat(DayVisits.kept(NORTH, withoutGuests(HOST), HOST)).isFalse();
    }

    @Test
    void crewsCountOnNoMoreOnAnOldDay() {
        assertThat(DayVisits.kept(SOUTH, HOME, HOME)).isTrue();
        assertThat(DayVisits.kept(SOUTH, HOME, withoutVisits(HOME))).isTrue();
        assertThat(DayVisits.kept(SOUTH, withoutVisits(HOME), HOME)).isFalse();
    }

    /** An old day of north without the guest would save a line, and pass north's own replay: south would be a pack short. */
    @Test
    void aHostDoesNotGoBackWhereItsGuestCannot() {
        DepotPlan alone = plan(Planned.load(VisitingCrew.pair().replace("stops.csv", "3,north,12:00", "3,cafe,12:00")))
                .depots()
                .get(0);
        DepotPlan elsewhen = SOUTH.with(List.of(day(HOME, List.of(), HOME.loads())), SOUTH.costs());
        RoutineKeeper keeper = new RoutineKeeper(SCENARIO, HUGE);
        assertThat(keeper.keepVisits(NORTH, alone).plan().days().get(0).loads())
                .isEqualTo(alone.days().get(0).loads());

        Map<String, DepotPlan> earlier = new LinkedHashMap<>();
        earlier.put("north", alone);
        earlier.put("south", elsewhen);
        Map<String, Kept> kept = new VisitRoutine(SCENARIO, HUGE, new FleetAssembly(SCENARIO), earlier)
                .keep(PLAN, FleetAssembly.byDepot(PLAN));
        assertThat(kept.get("north").plan()).isEqualTo(NORTH);
        assertThat(kept.get("south").plan()).isEqualTo(SOUTH);
    }
}
