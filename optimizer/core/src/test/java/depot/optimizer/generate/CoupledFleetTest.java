package depot.optimizer.generate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.generate.CouplingSettings.Kind;
import depot.optimizer.scenario.Coupling;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.Owned;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.RouteStop;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoupledFleetTest {
    private static final CouplingSettings ALL =
            new CouplingSettings(3, OptionalDouble.of(0.3), EnumSet.complementOf(EnumSet.of(Kind.OPTIONAL)));

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aFleetWithEverythingPassesTheCheckAndReadsBack(long seed) throws IOException {
        passesAndReadsBack(fleet(ALL, seed));
    }

    @ParameterizedTest
    @EnumSource
    void aFleetWithOneThingPassesTheCheckAndReadsBack(Kind kind) throws IOException {
        Scenario fleet = fleet(with(kind), 4);
        assertThat(fleet).isNotEqualTo(fleet(CouplingSettings.NONE, 4));
        passesAndReadsBack(fleet);
    }

    @Test
    void phasesAloneReadBack() throws IOException {
        Scenario fleet = fleet(new CouplingSettings(8, OptionalDouble.empty(), Set.of()), 4);
        assertThat(fleet.coupling().phases()).extracting(Phase::year).containsExactly(0, 1, 2, 3, 4, 5, 6, 7);
        passesAndReadsBack(fleet);
    }

    /** The phase that every scenario has is written only where a row names it. */
    @Test
    void theOnlyPhaseIsWrittenWhereACrewNamesIt() throws IOException {
        Scenario fleet = fleet(new CouplingSettings(1, OptionalDouble.empty(), Set.of(Kind.CONVERSIONS)), 4);
        assertThat(fleet.coupling().phases()).containsExactly(Phase.NOW);
        assertThat(fleet.coupling().conversions())
                .isNotEmpty()
                .allSatisfy(conversion -> assertThat(conversion.latestPhase()).isEmpty());
        passesAndReadsBack(fleet);
        ScenarioWriter.write(fleet(with(Kind.TIERS), 4), folder.resolve("tiers"));
        assertThat(folder.resolve("written/phases.csv")).hasContent("phase,year,budget\nnow,0,\n");
        assertThat(folder.resolve("tiers/phases.csv")).doesNotExist();
    }

    @Test
    void theSameSeedGivesTheSameFleetAndAnotherAnother() {
        assertThat(fleet(ALL, 5)).isEqualTo(fleet(ALL, 5));
        assertThat(fleet(ALL, 6).coupling().conversions())
                .isNotEqualTo(fleet(ALL, 5).coupling().conversions());
        assertThat(fleet(ALL, 6).crewBases()).isNotEqualTo(fleet(ALL, 5).crewBases());
    }

    /** Only visits change what a crew's day looks like; only moves change what is owned. */
    @Test
    void whatCouplesDepotsDoesNotChangeThem() {
        Scenario plain = fleet(CouplingSettings.NONE, 5);
        Scenario coupled = fleet(ALL, 5);
        assertThat(coupled.depots()).isEqualTo(plain.depots());
        assertThat(fleet(with(Kind.BASES), 5).stops()).isEqualTo(plain.stops());
        assertThat(fleet(with(Kind.VISITS), 5).owned()).isEqualTo(plain.owned());
    }

    @Test
    void everyKindOfConversionIsThere() {
        Coupling coupling = fleet(with(Kind.CONVERSIONS), 5).coupling();
        assertThat(coupling.conversions())
                .hasSizeLessThan(48)
                .anyMatch(conversion -> conversion.latestPhase().isEmpty())
                .anyMatch(conversion -> !conversion.earliestPhase().equals("year-1"))
                .anyMatch(conversion -> conversion.earliestPhase().equals("year-1")
                        && conversion.latestPhase().filter("year-3"::equals).isPresent());
    }

    /** So that there is a plan however little the earlier phases allow. */
    @Test
    void everyCrewCanWaitForTheLastPhaseWhichHasNoLimit() {
        Coupling coupling = fleet(ALL, 5).coupling();
        assertThat(coupling.conversions()).hasSize(48).allSatisfy(conversion -> assertThat(
                        conversion.latestPhase().orElse("year-3"))
                .isEqualTo("year-3"));
        assertThat(coupling.phases().get(0).budget()).isPresent();
        assertThat(coupling.phases().get(2).budget()).isEmpty();
        assertThat(coupling.regionBudgets()).hasSize(2).allSatisfy(budget -> assertThat(budget.phase())
                .isNotEqualTo("year-3"));
        assertThat(coupling.deliveryLimits()).hasSize(4).allSatisfy(limit -> assertThat(limit.phase())
                .isNotEqualTo("year-3"));
    }

    /** 48 crews with 4 to 12 packs each of 240 or 790, and a bay of a charger of 410 for each pack. */
    @Test
    void budgetsFollowTheEstimate() {
        BigDecimal third = budget(0.3);
        assertThat(third).isBetween(new BigDecimal("17000"), new BigDecimal("100000"));
        assertThat(budget(0.6).subtract(third.multiply(BigDecimal.valueOf(2))).abs())
                .isLessThanOrEqualTo(new BigDecimal("200"));
    }

    private static BigDecimal budget(double share) {
        CouplingSettings settings = new CouplingSettings(3, OptionalDouble.of(share), Set.of(Kind.CONVERSIONS));
        return fleet(settings, 5).coupling().phases().get(0).budget().orElseThrow();
    }

    @Test
    void visitsAreAtAnotherDepotAtLunch() {
        Scenario fleet = fleet(with(Kind.VISITS), 5);
        assertThat(fleet.visits()).isNotEmpty().allSatisfy(stop -> {
            assertThat(stop.leaveMinute()).isGreaterThan(stop.arriveMinute());
            assertThat(stop.arriveMinute()).isBetween(700, 740);
        });
        assertThat(fleet.visits().stream().map(RouteStop::crew).distinct()).hasSize(16);
    }

    @Test
    void basesAreElsewhereAndHaveACost() {
        Scenario fleet = fleet(with(Kind.BASES), 5);
        Map<String, Crew> crews = fleet.crews().stream().collect(Collectors.toMap(Crew::id, Function.identity()));
        assertThat(fleet.crewBases()).hasSize(48);
        for (CrewBase base : fleet.crewBases()) {
            assertThat(fleet.basesOf(crews.get(base.crew()))).hasSize(2).contains(base.depot());
        }
    }

    @Test
    void someDepotsOwnMoreThanTheyNeed() {
        Scenario fleet = fleet(with(Kind.MOVES), 5);
        String item = fleet.coupling().moves().get(0).item();
        assertThat(fleet.owned())
                .filteredOn(owned -> owned.item().equals(item))
                .extracting(Owned::count)
                .anyMatch(count -> count >= 60);
    }

    @Test
    void whereChangingIsOptionalEveryPhaseHasABudgetAndNoCrewHasToChange() {
        Coupling one = fleet(new CouplingSettings(1, OptionalDouble.of(0.3), Set.of(Kind.OPTIONAL)), 4)
                .coupling();
        assertThat(one.phases()).singleElement().satisfies(phase -> assertThat(phase.budget())
                .isPresent());
        Scenario fleet = fleet(new CouplingSettings(3, OptionalDouble.of(0.3), Set.of(Kind.OPTIONAL)), 4);
        assertThat(fleet.coupling().phases()).hasSize(3).allSatisfy(phase -> assertThat(phase.budget())
                .isPresent());
        assertThat(fleet.coupling().regionBudgets()).isEmpty();
        assertThat(fleet.coupling().conversions())
                .hasSameSizeAs(fleet.crews())
                .allSatisfy(conversion -> assertThat(conversion.latestPhase()).isEmpty());
    }

    @Test
    void tiersLieWithinReachOfTheFleet() {
        Coupling small = FleetGenerator.generate(new GeneratorSettings(1, 1, 2, 1, 1, 1, 1), with(Kind.TIERS), 1)
                .coupling();
        assertThat(small.priceTiers())
                .allSatisfy(tier -> assertThat(tier.fromCount()).isBetween(2, 12));
        assertThat(fleet(with(Kind.TIERS), 1).coupling().priceTiers())
                .allSatisfy(tier -> assertThat(tier.fromCount()).isBetween(20, 48 * 12));
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() {
        OptionalDouble none = OptionalDouble.empty();
        Set<Kind> limits = EnumSet.of(Kind.LIMITS, Kind.CONVERSIONS);
        assertThatCode(() -> new CouplingSettings(2, none, limits)).doesNotThrowAnyException();
        assertThatThrownBy(() -> new CouplingSettings(1, none, limits)).hasMessageContaining("2 phases or more");
        assertThatThrownBy(() -> new CouplingSettings(2, OptionalDouble.of(0.5), Set.of()))
                .hasMessageContaining("conversions");
        assertThatThrownBy(() -> new CouplingSettings(9, none, Set.of())).hasMessageContaining("phases is 9");
        assertThatThrownBy(() -> new CouplingSettings(2, OptionalDouble.of(1.01), limits))
                .hasMessageContaining("budgetShare is 1.01");
        assertThatThrownBy(() -> new CouplingSettings(2, none, EnumSet.of(Kind.OPTIONAL, Kind.CONVERSIONS)))
                .hasMessageContaining("choose one");
        GeneratorSettings one = GeneratorSettings.DEFAULT.withDepots(1);
        assertThatThrownBy(() -> FleetGenerator.generate(one, with(Kind.VISITS), 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("depots is 1");
    }

    private static CouplingSettings with(Kind kind) {
        Set<Kind> kinds = kind == Kind.LIMITS ? EnumSet.of(kind, Kind.CONVERSIONS) : EnumSet.of(kind);
        boolean inPhases = kinds.contains(Kind.CONVERSIONS);
        return new CouplingSettings(inPhases ? 3 : 1, OptionalDouble.empty(), kinds);
    }

    private static Scenario fleet(CouplingSettings settings, long seed) {
        return FleetGenerator.generate(GeneratorSettings.DEFAULT, settings, seed);
    }

    /** Nothing is found. */
    private void passesAndReadsBack(Scenario fleet) throws IOException {
        Path target = folder.resolve("written");
        ScenarioWriter.write(fleet, target);
        LoadedScenario loaded = ScenarioLoader.load(target);
        assertThat(loaded.scenario()).contains(fleet);
        assertThat(loaded.findings()).isEmpty();
    }
}
