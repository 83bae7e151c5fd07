package depot.optimizer.solve;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioEdit;
import depot.optimizer.fixture.TinyScenarios;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Plans of tiny depots cost what full enumeration says; see {@link DepotOracle}. */
class EnumerationTest {

    private static final int SEEDS = 240;
    private static final int MOST_PLACES = 3;
    private static final int LAST_STOP_OF_ONE_TRIP = 3;

    /** Relative. */
    private static final double SAME_COST = 1e-6;

    @Test
    void plansOfDepotsWithOneTripACrewAreTheCheapest() {
        List<Long> seeds = seeds(false);

        assertThat(seeds).hasSizeGreaterThan(SEEDS / 4);
        assertThat(seeds.stream().flatMap(EnumerationTest::difference)).isEmpty();
    }

    @Test
    void plansOfDepotsWithASecondTripAfterLunchAreTheCheapest() {
        List<Long> seeds = seeds(true);

        assertThat(seeds).hasSizeGreaterThan(SEEDS / 2);
        assertThat(seeds.stream().flatMap(EnumerationTest::difference)).isEmpty();
    }

    private static List<Long> seeds(boolean lunch) {
        return LongStream.rangeClosed(1, SEEDS)
                .filter(seed -> lunch
                        == TinyScenarios.random(seed).stops().stream()
                                .anyMatch(stop -> stop.stop() > LAST_STOP_OF_ONE_TRIP))
                .boxed()
                .toList();
    }

    /** What is wrong with the plan of a seed. */
    private static Stream<String> difference(long seed) {
        Scenario scenario = plain(TinyScenarios.random(seed), seed);
        double cheapest = new DepotOracle(scenario).cheapest();
        double planned = Planned.of(scenario).cost();
        return Math.abs(planned - cheapest) <= SAME_COST * cheapest
                ? Stream.empty()
                : Stream.of("seed %d: planned %.4f, enumerated %.4f".formatted(seed, planned, cheapest));
    }

    /** The scenario without sharing units; with two prices only where all packs are of one type, so that turns are of one length. */
    private static Scenario plain(Scenario s, long seed) {
        return new ScenarioEdit(s)
                .withoutUnits()
                .depot(withPlaces(s.depots().get(0)))
                .prices(prices(s, seed))
                .scenario();
    }

    private static Depot withPlaces(Depot d) {
        return new Depot(
                d.id(),
                d.name(),
                d.region(),
                d.latitude(),
                d.longitude(),
                d.tariff(),
                d.supplyVolts(),
                d.supplyPhases(),
                d.supplyAmps(),
                Math.min(MOST_PLACES, d.places()),
                d.staffedFromMinute(),
                d.staffedToMinute(),
                d.swapMinutes(),
                d.supplyUpgradeAmps(),
                d.supplyUpgradeCost());
    }

    /** Dear until some time after the first return, so that later loadings and later turns are cheaper. */
    private static List<PriceBand> prices(Scenario s, long seed) {
        PriceBand first = s.priceBands().get(0);
        int edge = 1020 + 15 * (int) (seed % 14);
        List<PriceBand> bands = new ArrayList<>();
        if (s.packTypes().size() > 1) {
            bands.add(band(first, 0, 1440, "0.25"));
        } else {
            bands.add(band(first, 0, 420, "0.10"));
            bands.add(band(first, 420, edge, "0.40"));
            bands.add(band(first, edge, 1440, "0.10"));
        }
        return bands;
    }

    private static PriceBand band(PriceBand like, int from, int to, String price) {
        return new PriceBand(like.tariff(), like.season(), Set.copyOf(like.days()), from, to, new BigDecimal(price));
    }
}
