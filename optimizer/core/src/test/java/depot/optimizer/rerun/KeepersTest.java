package depot.optimizer.rerun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.plan.ChargerLoad;
import depot.optimizer.plan.ChargerLoad.Loaded;
import depot.optimizer.plan.ChargerPlacement;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.rerun.RoutineKeeper.Kept;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Names, places and days that stay: the plan of the small example, some of it renamed or moved by hand. */
class KeepersTest {

    private static final Planned STARTER = Planned.of(RerunText.starter());

    private static final DepotPlan EARLIER = STARTER.plan();

    private static final double ROUNDING = 1e-6;

    @Test
    void chargersGetTheirNamesAndOutletsBack() {
        List<ChargerPlacement> chargers = EARLIER.chargers();
        DepotPlan renamed = renamed(charger -> {
            int like = (int) chargers.stream()
                    .filter(other -> other.circuit().equals(charger.circuit()))
                    .count();
            return named(charger, charger.circuit() + "-x" + charger.outlet(), like + 1 - charger.outlet());
        });
        assertThat(renamed.chargers()).isNotEqualTo(chargers);

        DepotPlan kept = PlaceKeeper.keep(renamed, EARLIER);

        assertThat(kept.chargers()).isEqualTo(chargers);
        assertThat(kept.days()).isEqualTo(EARLIER.days());
    }

    @Test
    void aChargerThatWasNotThereTakesAFreeOutlet() {
        PlanParts parts = new PlanParts(EARLIER);
        ChargerPlacement last = EARLIER.chargers().get(EARLIER.chargers().size() - 1);
        parts.chargers = EARLIER.chargers().stream()
                .filter(charger -> !charger.equals(last))
                .toList();
        DepotPlan fewer = parts.plan();

        ChargerPlacement back = PlaceKeeper.keep(EARLIER, fewer).chargers().stream()
                .filter(charger -> !fewer.chargers().contains(charger))
                .findFirst()
                .orElseThrow();

        assertThat(back.circuit()).isEqualTo(last.circuit());
        assertThat(fewer.chargers())
                .filteredOn(charger -> charger.circuit().equals(back.circuit()))
                .extracting(ChargerPlacement::outlet)
                .doesNotContain(back.outlet());
    }

    @Test
    void aDayStaysAsItWasWhereALineIsWorthSomething() {
        DepotPlan other = withAPackMoved();
        assertThat(FleetReplay.runDepot(STARTER.scenario(), other).proven()).isTrue();
        assertThat(Routine.changes(Optional.of(EARLIER), Optional.of(other))).isNotEmpty();

        assertThat(keeper(1).keep(other).days()).isEqualTo(EARLIER.days());
        assertThat(keeper(0).keep(other)).isEqualTo(other);
    }

    @Test
    void aDayThatDoesNotPassTheReplayIsNotKept() {
        DepotPlan spoilt = EARLIER.with(
                EARLIER.days().stream().map(KeepersTest::withoutItsFirstLoad).toList(), EARLIER.costs());
        DayKeeper keeper = new DayKeeper(STARTER.scenario(), STARTER.problem(), spoilt, 1, DayVisits::kept);
        assertThat(keeper.keep(EARLIER)).isEqualTo(EARLIER);
    }

    @Test
    void whatKeepingComesToIsCounted() {
        DepotPlan other = withAPackMoved();
        int lines = Routine.changes(Optional.of(EARLIER), Optional.of(other)).stream()
                .mapToInt(change -> change.days().size())
                .sum();

        Kept kept = new RoutineKeeper(STARTER.scenario(), 1).keep(other, EARLIER);

        assertThat(kept.plan().days()).isEqualTo(EARLIER.days());
        assertThat(kept.trade().linesFree()).isEqualTo(lines).isPositive();
        assertThat(kept.trade().linesKept()).isZero();
        assertThat(kept.trade().costMore()).isCloseTo(0, within(ROUNDING));
        assertThat(kept.plan().stop().certificate().cost())
                .isCloseTo(EARLIER.stop().certificate().cost(), within(ROUNDING));
    }

    @Test
    void chargersGoBackToTheirOldCircuit() {
        // Either circuit has one quick and one row: with the quick of the wall on the bench, the bench's breaker would
        // not hold.
        DepotPlan moved = renamed(charger ->
                charger.circuit().equals("wall") && charger.chargerType().equals("quick")
                        ? new ChargerPlacement("bench-09", "bench", "quick", 9, false, false, charger.owned())
                        : charger);
        assertThat(OldPlaces.same(moved, EARLIER)).isFalse();
        assertThat(OldPlaces.same(OldPlaces.of(moved, EARLIER), EARLIER)).isTrue();
        assertThat(PlaceChange.between(Optional.of(EARLIER), Optional.of(moved)))
                .containsExactly(new PlaceChange("yard", "quick", "wall", "bench", 1));
    }

    private static DayKeeper keeper(double perLine) {
        return new DayKeeper(STARTER.scenario(), STARTER.problem(), EARLIER, perLine, DayVisits::kept);
    }

    private static DayPlan withoutItsFirstLoad(DayPlan day) {
        return loads(day, day.loads().subList(1, day.loads().size()));
    }

    /** In the night one pack of the first row charges in the quick beside it instead, which has nothing to do then. */
    private static DepotPlan withAPackMoved() {
        return EARLIER.with(EARLIER.days().stream().map(KeepersTest::moved).toList(), EARLIER.costs());
    }

    private static DayPlan moved(DayPlan day) {
        ChargerLoad row = day.loads().stream()
                .filter(load -> load.packs().stream().mapToInt(Loaded::count).sum() == 4)
                .findFirst()
                .orElseThrow();
        String circuit = charger(row.charger()).circuit();
        String quick = EARLIER.chargers().stream()
                .filter(charger -> charger.circuit().equals(circuit)
                        && charger.chargerType().equals("quick"))
                .findFirst()
                .map(ChargerPlacement::id)
                .orElseThrow();
        List<ChargerLoad> loads = new ArrayList<>(day.loads());
        loads.set(loads.indexOf(row), with(row, row.charger(), 3));
        loads.add(with(row, quick, 1));
        return loads(day, loads);
    }

    private static ChargerLoad with(ChargerLoad load, String charger, int packs) {
        Loaded like = load.packs().get(0);
        return new ChargerLoad(
                charger,
                load.loadMinute(),
                load.collectMinute(),
                List.of(new Loaded(like.packType(), like.pool(), like.level(), packs)));
    }

    private static ChargerPlacement charger(String id) {
        return EARLIER.chargers().stream()
                .filter(charger -> charger.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static ChargerLoad named(ChargerLoad load, String charger) {
        return new ChargerLoad(charger, load.loadMinute(), load.collectMinute(), load.packs());
    }

    private static ChargerPlacement named(ChargerPlacement charger, String id, int outlet) {
        return new ChargerPlacement(
                id,
                charger.circuit(),
                charger.chargerType(),
                outlet,
                charger.shared(),
                charger.priority(),
                charger.owned());
    }

    private static DepotPlan renamed(UnaryOperator<ChargerPlacement> name) {
        Map<String, ChargerPlacement> placed =
                EARLIER.chargers().stream().collect(Collectors.toMap(ChargerPlacement::id, name));
        PlanParts parts = new PlanParts(EARLIER);
        parts.chargers = EARLIER.chargers().stream()
                .map(charger -> placed.get(charger.id()))
                .toList();
        return parts.plan()
                .with(
                        EARLIER.days().stream()
                                .map(day -> loads(
                                        day,
                                        day.loads().stream()
                                                .map(load -> named(
                                                        load,
                                                        placed.get(load.charger())
                                                                .id()))
                                                .toList()))
                                .toList(),
                        EARLIER.costs());
    }

    private static DayPlan loads(DayPlan day, List<ChargerLoad> loads) {
        return new DayPlan(
                day.occurrences(),
                day.daysPerYear(),
                day.startMinute(),
                day.trips(),
                loads,
                day.feeds(),
                day.energy(),
                day.demandKw());
    }
}
