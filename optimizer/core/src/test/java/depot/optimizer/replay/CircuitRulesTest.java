package depot.optimizer.replay;

import static depot.optimizer.replay.Replays.PLAN;
import static depot.optimizer.replay.Replays.SCENARIO;
import static depot.optimizer.replay.Replays.broken;
import static depot.optimizer.replay.Replays.change;
import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.replay.Violation.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Circuits without a unit, the supply, and places: each rule kept to the limit and broken just beyond it. */
class CircuitRulesTest {
    private static final String TWO = change(PLAN, "charger Q-1 C Q", "charger Q-1 C Q\ncharger Q-2 C Q");

    @ParameterizedTest
    @CsvSource({
        // NEC 210.20(A): a device carries 125 % of a continuous load, so 20 A carry 16 A and 15 A carry 12 A (rule
        // seen).
        "20, 16.00, true",
        "20, 16.01, false",
        "15, 12.00, true",
        "15, 12.01, false"
    })
    void aBreakerCarriesEightyPerCentOfItsRatingForHours(int breaker, double amps, boolean kept) {
        String scenario = change(
                change(SCENARIO, "circuit C breaker=10", "circuit C breaker=" + breaker),
                "plate=75",
                "plate=" + 230 * amps);

        assertThat(broken(scenario, PLAN).contains(Kind.CIRCUIT_CURRENT)).isEqualTo(!kept);
    }

    @ParameterizedTest
    @CsvSource({
        // Three-phase power sqrt(3) V I: 400 V at 16 A and 32 A (recomputed).
        "400, 3, 16, 11085, 11086",
        "400, 3, 32, 22170, 22171",
        // BS 1363: 230 V, 13 A; IEC 60309: 230 V, 16 A; NEMA 5-15: 120 V, 15 A for hours at 0.8 (from memory).
        "230, 1, 13, 2990, 2991",
        "230, 1, 16, 3680, 3681",
        "120, 1, 12, 1440, 1441"
    })
    void aPlugCarriesItsCurrent(double volts, int phases, double amps, double watts, double tooMany) {
        String circuit = "circuit C volts=%s phases=%d plug=%s breaker=1000".formatted(volts, phases, amps);
        String scenario = change(SCENARIO, "circuit C breaker=10", circuit);

        assertThat(broken(change(scenario, "plate=75", "plate=" + watts), PLAN)).doesNotContain(Kind.PLUG_CURRENT);
        assertThat(broken(change(scenario, "plate=75", "plate=" + tooMany), PLAN))
                .contains(Kind.PLUG_CURRENT);
    }

    @Test
    void platesAddUpWhetherTheyDrawOrNot() {
        String wide = change(SCENARIO, "places=1", "places=2");

        // 8 A for hours: two plates of 920 W are exactly that.
        assertThat(broken(change(wide, "plate=75", "plate=920"), TWO)).isEmpty();
        assertThat(broken(change(wide, "plate=75", "plate=921"), TWO)).containsExactly(Kind.CIRCUIT_CURRENT);
    }

    @Test
    void theHighestBaseLoadOfTheWeekCountsAgainstACircuit() {
        String plate = change(SCENARIO, "plate=75", "plate=920");

        assertThat(broken(plate + "base 10:00 11:00 days=Tue circuit=C amps=4\n", PLAN))
                .isEmpty();
        assertThat(broken(plate + "base 10:00 11:00 days=Tue circuit=C amps=4.01\n", PLAN))
                .containsExactly(Kind.CIRCUIT_CURRENT);
    }

    @Test
    void aPowerFactorBelowOneRaisesTheCurrent() {
        String plate = change(SCENARIO, "plate=75", "plate=1748");

        assertThat(broken(change(plate, "breaker=10", "breaker=10 pf=0.95"), PLAN))
                .isEmpty();
        assertThat(broken(change(plate, "breaker=10", "breaker=10 pf=0.94"), PLAN))
                .containsExactly(Kind.CIRCUIT_CURRENT);
    }

    @Test
    void eachPlugHasAnOutletOfItsOwn() {
        String wide = change(SCENARIO, "places=1", "places=3");

        assertThat(broken(wide, TWO)).isEmpty();
        assertThat(broken(wide, change(TWO, "charger Q-2 C Q", "charger Q-2 C Q outlet=1")))
                .containsExactly(Kind.OUTLETS);
        assertThat(broken(wide, change(TWO, "charger Q-2 C Q", "charger Q-2 C Q\ncharger Q-3 C Q")))
                .containsExactly(Kind.OUTLETS);
    }

    @Test
    void chargersTakePlaces() {
        assertThat(broken(SCENARIO, TWO)).containsExactly(Kind.PLACES);
    }

    @Test
    void theSupplyCarriesPlatesAndBaseLoadToEightyPerCent() {
        String plate = change(SCENARIO, "plate=75", "plate=920");
        String supply = change(plate, "depot D", "depot D amps=10") + "base 03:00 04:00 days=Wed amps=%s\n";

        // 8 A for hours, of which the charger's plate takes 4 A, though it is idle at that hour.
        assertThat(broken(supply.formatted("4"), PLAN)).isEmpty();
        assertThat(broken(supply.formatted("4.01"), PLAN)).containsExactly(Kind.SUPPLY_CURRENT);
    }

    @Test
    void theSupplyOverloadIsFoundOnTheDayBeforeItsNight() {
        String supply = change(change(SCENARIO, "plate=75", "plate=920"), "depot D", "depot D amps=10");

        DepotReplay replay = Replays.run(supply + "base 03:00 04:00 days=Wed amps=5\n", PLAN);

        // The night of Tuesday's cycle is Wednesday's early morning.
        assertThat(replay.failedDays()).singleElement().satisfies(day -> {
            assertThat(day.occurrences()).extracting(o -> o.day().name()).containsExactly("TUESDAY");
            assertThat(day.violations().get(0).minute()).isEqualTo(27 * 60);
        });
    }

    @Test
    void aThreePhaseSupplyCarriesMore() {
        String plate = change(SCENARIO, "plate=75", "plate=1840");
        String tight = change(plate, "depot D", "depot D volts=230 amps=10");
        String three = change(plate, "depot D", "depot D volts=400 phases=3 amps=3.33");

        assertThat(broken(tight, PLAN)).isEmpty();
        // 1840 W / (400 V * sqrt(3)) is 2.656 A, of 2.664 A allowed.
        assertThat(broken(three, PLAN)).isEmpty();
        assertThat(broken(change(three, "amps=3.33", "amps=3.31"), PLAN)).containsExactly(Kind.SUPPLY_CURRENT);
    }

    @Test
    void anUpgradedSupplyCarriesItsNewRating() {
        String tight = change(change(SCENARIO, "plate=75", "plate=920"), "depot D", "depot D amps=4 upgrade=6");

        assertThat(broken(tight, PLAN)).containsExactly(Kind.SUPPLY_CURRENT);
        assertThat(broken(tight, "upgraded\n" + PLAN)).isEmpty();
        assertThat(broken(SCENARIO, "upgraded\n" + PLAN)).containsExactly(Kind.NOT_BUILT);
    }

    @Test
    void aCandidateCircuitHasToBeBuilt() {
        String candidate = change(SCENARIO, "circuit C", "circuit C install=500");

        assertThat(broken(candidate, "built C\n" + PLAN)).isEmpty();
        assertThat(broken(candidate, PLAN)).containsExactly(Kind.NOT_BUILT);
    }
}
