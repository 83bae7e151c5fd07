package depot.optimizer.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.VisitingCrew;
import depot.optimizer.fleet.FleetPlanner.Method;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PackStock;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.plan.TripPlan.RoadSource;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.replay.BoundCheck;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.Series;
import depot.optimizer.scenario.Scenario;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Crews that have lunch in another depot and use its bays. */
class VisitsTest {

    private static final double GAP = 0.0005;

    static ScenarioText pair() {
        return VisitingCrew.pair();
    }

    private static ScenarioText quick(int breakerAmps) {
        return VisitingCrew.quick(breakerAmps);
    }

    static ScenarioText withoutVisit(ScenarioText text) {
        return text.replace("stops.csv", "3,north,12:00", "3,cafe,12:00");
    }

    static FleetResult plan(ScenarioText text, Method method) {
        return new FleetPlanner(ProgressListener.SILENT).plan(Planned.load(text), new TreeMap<>(), method);
    }

    private static double cost(FleetResult result) {
        return result.plan().certificate().cost();
    }

    static List<RoadCharge> visits(Plan plan) {
        return plan.depots().stream()
                .flatMap(depot -> depot.days().stream())
                .flatMap(day -> day.trips().stream())
                .flatMap(trip -> trip.roadCharges().stream())
                .filter(charge -> charge.source().atAnotherDepot())
                .toList();
    }

    static List<ChargerLoad> ofGuests(DepotPlan plan) {
        return plan.days().stream()
                .flatMap(day -> day.loads().stream())
                .filter(load -> load.packs().stream().anyMatch(packs -> plan.visitor(packs.pool())))
                .toList();
    }

    private static void assertProven(FleetResult result) {
        assertThat(result.replay().violations()).isEmpty();
        assertThat(result.replay().proven()).isTrue();
    }

    /**
     * By hand: a pack costs 300 less what it is worth at the end, 300 * 1.05^-10; a charger that lives as long as the horizon costs 200. Charges and
     * energy are the same with and without the visit, and wear goes by charges: 3 * 150 / 1000 a year are more than 3 / 8.
     */
    @ParameterizedTest
    @EnumSource(Method.class)
    void aVisitSparesAPackAndACharger(Method method) {
        FleetResult with = plan(pair(), method);
        FleetResult without = plan(withoutVisit(pair()), method);

        double spared = 300 * (1 - Math.pow(1.05, -10)) + 200;
        assertThat(cost(without) - cost(with)).isCloseTo(spared, within(GAP * cost(without)));
        assertProven(with);
        assertProven(without);
        DepotPlan north = with.plan().depots().get(0);
        DepotPlan south = with.plan().depots().get(1);
        assertThat(south.packs()).extracting(PackStock::count).containsExactly(2);
        assertThat(visits(with.plan()))
                .containsExactly(new RoadCharge(RoadSource.VISIT, 3, 4, 720, 780, "", "pack-500", 1));
        assertThat(ofGuests(north))
                .containsExactly(new ChargerLoad(
                        "north-1-01",
                        720,
                        780,
                        List.of(new ChargerLoad.Loaded("pack-500", "crew-2", ChargerLoad.Level.FULL, 1))));
        assertThat(visits(without.plan())).isEmpty();
    }

    /** The packs of guests are in the host's bays and on its circuit, and its meter pays: 500 Wh from the mains a day. */
    @Test
    void theHostCarriesAndPaysForWhatItGives() {
        FleetResult with = plan(pair(), Method.WHOLE);
        FleetResult without = plan(withoutVisit(pair()), Method.WHOLE);
        double kwh = kwh(with.plan().depots().get(0));

        assertThat(kwh - kwh(without.plan().depots().get(0))).isCloseTo(0.5, within(1e-6));
        DayReplay day = with.replay().depots().get(0).days().get(0);
        Series watts = day.circuitLoads().stream()
                .filter(load -> load.circuit().equals("north-1"))
                .findFirst()
                .orElseThrow()
                .watts();
        int noon = (720 - 420) / 15;
        assertThat(watts.at(noon - 1)).isZero();
        assertThat(watts.at(noon)).isGreaterThan(500);
        assertThat(watts.at(noon + 4)).isZero();
    }

    private static double kwh(DepotPlan plan) {
        return plan.days().get(0).energy().stream()
                .mapToDouble(use -> use.kwh())
                .sum();
    }

    /**
     * North needs its duo for the night (600 W, 2.61 A) and a swift for the visit (1,100 W, 4.78 A): 7.39 A. A breaker of 10 A carries 8 A for hours, one
     * of 9 A carries 7.2 A.
     */
    @ParameterizedTest
    @CsvSource({"10, APART, 1", "10, WHOLE, 1", "9, APART, 0", "9, WHOLE, 0"})
    void theHostsCircuitDecides(int breakerAmps, Method method, int packs) {
        FleetResult result = plan(quick(breakerAmps), method);

        assertProven(result);
        assertThat(visits(result.plan()).stream().mapToInt(RoadCharge::packs).sum())
                .isEqualTo(packs);
        assertThat(ofGuests(result.plan().depots().get(0))).hasSize(packs);
        if (packs == 0) {
            double without = cost(plan(withoutVisit(quick(breakerAmps)), method));
            assertThat(cost(result)).isCloseTo(without, within(GAP * without));
        }
    }

    @Test
    void bothMethodsAgreeAndTheBoundAddsUp() {
        for (ScenarioText text : List.of(pair(), quick(10), quick(9), bothWays())) {
            FleetResult apart = plan(text, Method.APART);
            FleetResult whole = plan(text, Method.WHOLE);
            double best = Math.min(cost(apart), cost(whole));

            assertProven(apart);
            assertProven(whole);
            assertThat(cost(apart)).isCloseTo(cost(whole), within(2 * GAP * best));
            assertThat(whole.plan().certificate().gap()).isLessThanOrEqualTo(GAP);
            assertThat(whole.plan().certificate().bound()).isLessThanOrEqualTo(best * (1 + 1e-9));
            assertThat(apart.plan().certificate().bound()).isLessThanOrEqualTo(best * (1 + 1e-9));
            assertThat(BoundCheck.of(Planned.load(text), apart.plan()).faults()).isEmpty();
            assertThat(BoundCheck.of(Planned.load(text), whole.plan()).faults()).isEmpty();
        }
    }

    /** Each crew visits the other's depot, at different hours. */
    private static ScenarioText bothWays() {
        return pair().replace("stops.csv", "crew-1,2,park,08:00,15:00", "crew-1,2,park,08:00,10:00")
                .replace(
                        "stops.csv",
                        "summer,Mon-Fri,crew-1,3,north,16:00,",
                        "summer,Mon-Fri,crew-1,3,south,10:30,11:30\nsummer,Mon-Fri,crew-1,4,wood,12:00,15:00\n"
                                + "summer,Mon-Fri,crew-1,5,north,16:00,")
                .replace("work.csv", "crew-1,2,trimmer,2", "crew-1,2,trimmer,1.2")
                .rows("work.csv", "summer,Mon-Fri,crew-1,4,trimmer,1");
    }

    /** 45 minutes are enough for 80 % in a duo, 360 Wh: with what is left of two packs too little for 440 Wh, and enough for 370 Wh. */
    @ParameterizedTest
    @CsvSource({"1.1, 0", "0.925, 1"})
    void aShortVisitGivesEightyPerCent(String hours, int packs) {
        FleetResult result = plan(
                pair().replace("stops.csv", "north,12:00,13:00", "north,12:00,12:45")
                        .replace("work.csv", "crew-2,4,trimmer,1.1", "crew-2,4,trimmer," + hours),
                Method.WHOLE);

        assertProven(result);
        assertThat(visits(result.plan())).hasSize(packs).allSatisfy(charge -> assertThat(charge.source())
                .isEqualTo(RoadSource.VISIT_EIGHTY));
    }

    /** The host's circuit has a load-sharing unit, which feeds guests on a priority outlet. */
    @Test
    void aGuestIsFedBehindAUnitOnAPriorityOutlet() {
        ScenarioText text = pair().replace("circuits.csv", "north-1,north,230,1,16,4", "north-1,north,230,1,16,1")
                .table("sharing_units.csv", """
                        unit_type,outlets,amps,priority_outlets,price,life_years
                        unit,4,4,1,20,10
                        """)
                .replace("work.csv", "crew-1,2,trimmer,2", "crew-1,2,trimmer,3.1");
        FleetResult result = plan(text, Method.WHOLE);

        assertProven(result);
        DepotPlan north = result.plan().depots().get(0);
        assertThat(north.units()).hasSize(1);
        assertThat(ofGuests(north)).singleElement().satisfies(load -> assertThat(north.chargers())
                .filteredOn(charger -> charger.id().equals(load.charger()))
                .allSatisfy(charger -> assertThat(charger.priority()).isTrue()));
    }

    /** South's crew comes on Saturdays as well, when nobody else is in north; on Mondays it has its lunch elsewhere. */
    @ParameterizedTest
    @EnumSource(Method.class)
    void theDaysOfBothDepotsAreMatched(Method method) {
        ScenarioText text = pair().replace("stops.csv", "Mon-Fri,crew-2", "Mon-Sat,crew-2")
                .replace("work.csv", "Mon-Fri,crew-2", "Mon-Sat,crew-2")
                .replace("stops.csv", "summer,Mon-Sat,crew-2,3,north", "summer,Tue-Sat,crew-2,3,north")
                .rows("stops.csv", "summer,Mon,crew-2,3,cafe,12:00,13:00");
        Scenario scenario = Planned.load(text);
        DepotRollout north =
                new DepotProblems(scenario).rollout(scenario.depots().get(0));
        assertThat(north.first().days())
                .extracting(day -> day.trips().size(), day -> day.guests().size(), day -> day.daysPerYear())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(1, 0, 30.0),
                        org.assertj.core.groups.Tuple.tuple(1, 1, 120.0),
                        org.assertj.core.groups.Tuple.tuple(0, 1, 30.0));

        // On Mondays three packs are needed all the same.
        assertProven(plan(text, method));
    }

    @Test
    void aCrewStillOnPetrolOrWorkingFromAnotherBaseHasNoVisit() {
        ScenarioText later = pair().table("phases.csv", "phase,year,budget\nfirst,0,\nsecond,2,\n")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-2,second,second\n")
                .column("crews.csv", "petrol_cost_per_year", "50");
        assertThat(visitLimits(later)).extracting(SharedLimit::phase).containsExactly("second");
        FleetResult result = plan(later, Method.WHOLE);
        assertProven(result);
        assertThat(ofGuests(result.plan().depots().get(0))).isEmpty();
        assertThat(ofGuests(result.plan().depots().get(2))).hasSize(1);

        ScenarioText elsewhere =
                pair().table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-2,north,1\ncrew-2,south,500\n");
        FleetResult moved = plan(elsewhere, Method.WHOLE);
        assertProven(moved);
        assertThat(moved.plan().depots().get(0).guests()).containsExactly("crew-2");
        assertThat(visits(moved.plan())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'12:00,13:00', 1",
        // Rounded to handovers of 15 minutes, an hour is left of 1 h 20 min.
        "'11:50,13:10', 1",
        // Of 1 h 10 min, 45 minutes: time for 80 %.
        "'11:50,13:00', 1",
        // 30 minutes.
        "'12:00,12:40', 0"
    })
    void aVisitIsOneWhereThereIsTimeToCharge(String times, int services) {
        assertThat(visitLimits(pair().replace("stops.csv", "12:00,13:00", times)))
                .hasSize(services);
    }

    /** North's day begins at 13:00 when its crew leaves then: a visit at 12:00 would end the day before it. */
    @Test
    void aVisitLiesInTheHostsDay() {
        ScenarioText late = pair().replace("stops.csv", "crew-1,1,north,,07:00", "crew-1,1,north,,13:00")
                .replace("stops.csv", "crew-1,2,park,08:00", "crew-1,2,park,13:00");
        assertThat(visitLimits(late)).isEmpty();
        assertThat(visitLimits(late.replace("stops.csv", "north,,13:00", "north,,12:00")
                        .replace("stops.csv", "crew-1,2,park,13:00", "crew-1,2,park,12:00")))
                .hasSize(1);
    }

    private static List<SharedLimit> visitLimits(ScenarioText text) {
        Scenario scenario = Planned.load(text);
        return new DepotProblems(scenario)
                .rollout(scenario.depots().get(0)).limits().stream()
                        .filter(limit -> limit.kind() == SharedLimit.Kind.VISIT)
                        .toList();
    }
}
