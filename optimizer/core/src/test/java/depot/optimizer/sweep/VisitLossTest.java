package depot.optimizer.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.fixture.VisitingCrew;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.plan.TripPlan.RoadCharge;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.replay.Violation;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.sweep.Loss.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Losses at depots that guests charge at, and at depots whose crews are guests elsewhere. */
class VisitLossTest {

    private static final String ALL = "\"charger_out\": \"yes\", \"one_pack_in\": 10, \"late_minutes\": 30";

    /** Energy for 440 Wh of work after the visit, less the 20 Wh that are left of two packs, on 150 days. */
    private static final double SHORT_KWH = 0.42 * 150;

    private static SweepResult sweep(ScenarioText text, String members) {
        return SweepText.run(Planned.load(text), "\"losses\": {%s}".formatted(members));
    }

    private static LossResult loss(SweepResult sweep, String depot, String words) {
        return sweep.losses().stream()
                .filter(each ->
                        each.loss().depot().equals(depot) && each.loss().words().startsWith(words))
                .findFirst()
                .orElseThrow();
    }

    private static List<RoadCharge> visits(DepotPlan plan) {
        return plan.days().stream()
                .flatMap(day -> day.trips().stream())
                .flatMap(trip -> trip.roadCharges().stream())
                .filter(charge -> charge.source().atAnotherDepot())
                .toList();
    }

    /** What a fleet breaks on visits when one depot goes by another plan. */
    private static List<String> broken(SweepResult sweep, Scenario scenario, DepotPlan plan) {
        Plan base = sweep.base().plan();
        List<DepotPlan> plans = base.depots().stream()
                .map(depot -> depot.depot().equals(plan.depot()) ? plan : depot)
                .toList();
        return FleetReplay.runFleet(scenario, base.with(base.certificate(), List.of(), plans)).stream()
                .filter(violation -> violation.kind() == Violation.Kind.VISIT)
                .map(Violation::message)
                .toList();
    }

    /** North's swift charger is there for the visit only: its own crew does without, and the guest comes home with an empty pack. */
    @Test
    void aGuestWhoseHostLosesItsChargerFallsShort() {
        SweepResult sweep = sweep(VisitingCrew.quick(10), "\"charger_out\": \"yes\"");
        LossResult swift = loss(sweep, "north", "1 swift");

        assertThat(swift.holds()).isFalse();
        assertThat(swift.held().orElseThrow().daysMet()).isEqualTo(150);
        assertThat(swift.homes()).singleElement().satisfies(south -> {
            assertThat(south.plan().depot()).isEqualTo("south");
            assertThat(south.daysShort()).isEqualTo(150);
            assertThat(south.shortKwh()).isCloseTo(SHORT_KWH, within(0.01));
            assertThat(south.proven()).isTrue();
            assertThat(visits(south.plan())).isEmpty();
        });
        // With south's days as they were, the fleet's replay misses the pack.
        DepotPlan left = swift.held().orElseThrow().plan();
        assertThat(broken(sweep, swift.scenario(), left))
                .first()
                .asString()
                .contains("crew-2 counts on 1 pack-500", "but north charges 0");
    }

    /** The charger that is lost costs 160, and what follows it was to follow the lost one as well. */
    @Test
    void theCureIsBoughtAtTheHostAndKeepsTheVisit() {
        SweepResult sweep = sweep(VisitingCrew.quick(10), "\"charger_out\": \"yes\"");
        LossResult swift = loss(sweep, "north", "1 swift");
        DepotOutcome cured = swift.cured().orElseThrow();

        assertThat(cured.proven()).isTrue();
        assertThat(cured.daysMet()).isEqualTo(150);
        assertThat(cured.plan().chargers())
                .extracting(ChargerPlacement::chargerType, ChargerPlacement::owned)
                .containsExactly(tuple("duo", true), tuple("swift", false));
        assertThat(swift.curedCost()).isCloseTo(160, within(1e-6));
        assertThat(broken(sweep, swift.scenario(), cured.plan())).isEmpty();
    }

    /** South has three packs and two chargers for its Mondays: on other days it can do without north, where it goes for the cheap energy. */
    @Test
    void aHomeThatCanDoWithoutTheVisitHolds() {
        SweepResult sweep = sweep(VisitingCrew.forTheEnergy(), "\"charger_out\": \"yes\"");
        assertThat(visits(sweep.base().of("south").get(0))).isNotEmpty();
        LossResult swift = loss(sweep, "north", "1 swift");

        assertThat(swift.holds()).isTrue();
        assertThat(swift.cured()).isEmpty();
        assertThat(swift.homes()).singleElement().satisfies(south -> {
            assertThat(south.daysMet()).isEqualTo(150);
            assertThat(south.proven()).isTrue();
            assertThat(visits(south.plan())).isEmpty();
        });
        assertThat(loss(sweep, "north", "1 duo").holds()).isFalse();
    }

    /** One of two swift chargers is left: the guest that can do without goes without. */
    @Test
    void theGuestThatCanDoWithoutMakesRoomForTheOther() {
        SweepResult sweep = sweep(VisitingCrew.twoGuests("cafe"), "\"charger_out\": \"yes\"");
        assertThat(sweep.base().of("north").get(0).chargers())
                .extracting(ChargerPlacement::chargerType)
                .containsExactly("swift", "swift");
        LossResult swift = loss(sweep, "north", "1 swift");

        assertThat(swift.holds()).isTrue();
        assertThat(swift.homes()).extracting(home -> home.plan().depot()).containsExactly("west");
    }

    @Test
    void whereBothGuestsNeedTheirPacksTheLossIsNotBorne() {
        SweepResult sweep = sweep(VisitingCrew.twoGuests("north"), "\"charger_out\": \"yes\"");
        LossResult swift = loss(sweep, "north", "1 swift");

        assertThat(swift.holds()).isFalse();
        assertThat(swift.homes())
                .extracting(home -> home.plan().depot(), DepotOutcome::daysMet)
                .containsExactly(tuple("south", 0.0), tuple("west", 0.0));
        assertThat(swift.cured().orElseThrow().proven()).isTrue();
        assertThat(swift.curedCost()).isCloseTo(160, within(1e-6));
    }

    @Test
    void aHomesOwnLossesAreCuredAtHomeWithTheVisitAsPlanned() {
        SweepResult sweep = sweep(VisitingCrew.pair(), ALL);

        assertThat(sweep.losses())
                .extracting(
                        each -> each.loss().depot(), each -> each.loss().kind(), LossResult::holds, each -> each.cured()
                                .map(DepotOutcome::proven)
                                .orElse(false))
                .containsExactly(
                        tuple("north", Kind.CHARGER_OUT, false, true),
                        tuple("north", Kind.PACKS_LOST, false, true),
                        tuple("north", Kind.LATE_RETURN, true, false),
                        tuple("south", Kind.CHARGER_OUT, false, true),
                        tuple("south", Kind.PACKS_LOST, false, true),
                        tuple("south", Kind.LATE_RETURN, true, false));
        for (LossResult each : sweep.losses()) {
            assertThat(each.left()).allMatch(DepotOutcome::proven);
            each.cured().ifPresent(cured -> {
                assertThat(broken(sweep, each.scenario(), cured.plan())).isEmpty();
                assertThat(cured.shortKwh()).isZero();
            });
        }
        DepotPlan south =
                loss(sweep, "south", "1 pack in 10").cured().orElseThrow().plan();
        assertThat(visits(south)).extracting(RoadCharge::packs).containsExactly(1);
    }

    @Test
    void onlyTheDepotsOwnCrewsAreLate() {
        SweepResult sweep = sweep(VisitingCrew.pair(), "\"late_minutes\": 30");

        Scenario late = loss(sweep, "north", "all crews back").scenario();
        assertThat(late.stops().stream().filter(stop -> stop.stop() > 1 && stop.arriveMinute() >= 960))
                .extracting(RouteStop::crew, RouteStop::arriveMinute)
                .containsExactlyInAnyOrder(tuple("crew-1", 990), tuple("crew-2", 960));
    }

    /** South's crew works from north, and passes by there at noon: that is no visit, and does not cut its day in two. */
    @Test
    void aCrewThatWorksFromItsHostHasNoVisitThere() {
        ScenarioText elsewhere = VisitingCrew.pair()
                .table("crew_bases.csv", "crew,depot,cost_per_year\ncrew-2,north,1\ncrew-2,south,500\n");
        SweepResult sweep = sweep(elsewhere, "\"charger_out\": \"yes\", \"late_minutes\": 30");
        assertThat(sweep.base().of("north").get(0).guests()).containsExactly("crew-2");

        assertThat(sweep.losses())
                .extracting(each -> each.loss().depot(), each -> each.loss().kind(), LossResult::holds)
                .containsExactly(tuple("north", Kind.CHARGER_OUT, false), tuple("north", Kind.LATE_RETURN, true));
        LossResult charger = sweep.losses().get(0);
        assertThat(charger.cured().orElseThrow().proven()).isTrue();
        assertThat(charger.scenario().stops())
                .extracting(RouteStop::place)
                .contains("stop at north")
                .doesNotContain("south");
    }

    /** South's crew changes in the second phase: only then north has a guest, and is asked again. */
    @Test
    void aHostIsAskedAgainInThePhaseInWhichAGuestComes() {
        ScenarioText later = VisitingCrew.pair()
                .table("phases.csv", "phase,year,budget\nfirst,0,\nsecond,2,\n")
                .table("crew_phases.csv", "crew,earliest_phase,latest_phase\ncrew-2,second,second\n")
                .column("crews.csv", "petrol_cost_per_year", "50");
        SweepResult sweep = sweep(later, "\"charger_out\": \"yes\"");

        assertThat(sweep.losses())
                .extracting(
                        each -> each.loss().depot(),
                        each -> each.loss().words(),
                        LossResult::holds,
                        each -> each.homes().size())
                .containsExactly(
                        tuple("north", "1 duo on circuit north-1 in first", false, 0),
                        tuple("north", "1 duo on circuit north-1 in second", false, 1),
                        tuple("south", "1 duo on circuit south-1 in second", false, 0));
        assertThat(sweep.losses()).allMatch(each -> each.cured().orElseThrow().proven());
    }
}
