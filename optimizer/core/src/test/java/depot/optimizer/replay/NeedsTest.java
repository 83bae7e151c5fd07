package depot.optimizer.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.scenario.RouteStop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Energy needs at a quantile. */
class NeedsTest {
    @ParameterizedTest
    @CsvSource({
        // exp(mu + z sigma) at 0.95 (recomputed).
        "0, 1, 5.18025",
        "1, 0.5, 6.18685"
    })
    void theQuantileOfALognormalIsThatOfItsLogarithm(double mu, double sigma, double expected) {
        // The mean and spread that a lognormal with these parameters has.
        double mean = Math.exp(mu + sigma * sigma / 2);
        double spread = Math.sqrt(Math.expm1(sigma * sigma));

        assertThat(new Needs.Quantile(0.95, spread).of(mean, mean * mean)).isCloseTo(expected, within(5e-6));
    }

    @ParameterizedTest
    @CsvSource({"0.90, 1.28155", "0.95, 1.64485", "0.975, 1.95996", "0.99, 2.32635"})
    void normalQuantilesAreThoseOfTheTables(double share, double z) {
        // NIST e-Handbook 1.3.6.7.1 (from memory, recomputed): with a small spread ln(need / mean) is z * sigma -
        // sigma^2 / 2.
        double sigma = Math.sqrt(Math.log1p(0.01 * 0.01));
        double need = new Needs.Quantile(share, 0.01).of(1, 1);

        assertThat((Math.log(need) + sigma * sigma / 2) / sigma).isCloseTo(z, within(5e-6));
    }

    @Test
    void aSumOfStopsVariesLessThanOneStop() {
        Needs needs = Needs.of(route(100, 100), new Needs.Quantile(0.9, 0.3)).get(0);

        double deviation = 0.3 * Math.sqrt(2) / 2;
        double variance = Math.log1p(deviation * deviation);
        double expected = new LogNormalDistribution(Math.log(200) - variance / 2, Math.sqrt(variance))
                .inverseCumulativeProbability(0.9);
        assertThat(needs.totalWh()).isCloseTo(expected, within(1e-6));
        assertThat(needs.usedWh()[2]).isLessThan(needs.usedWh()[1]);
    }

    @Test
    void aLongerPrefixNeverNeedsLess() {
        // Ten small stops after a large one narrow the spread so much that the quantile of the sum could fall.
        Needs needs =
                Needs.of(route(100, 0.001, 0.001), new Needs.Quantile(0.99, 2)).get(0);

        assertThat(needs.usedWh()[2]).isNotNegative();
        assertThat(needs.usedWh()[3]).isNotNegative();
    }

    @Test
    void withoutSpreadTheNeedIsTheMean() {
        assertThat(Needs.of(route(100, 50), new Needs.Quantile(0.9, 0)).get(0).totalWh())
                .isCloseTo(150, within(1e-9));
    }

    private static TripRoute route(double... wattHours) {
        RouteStop depot = new RouteStop("year", Set.of(), "A", 1, "D", 0, 0, 0);
        List<RouteStop> stops = new ArrayList<>(List.of(depot));
        List<Map<String, TripRoute.FamilyWork>> work = new ArrayList<>(List.of(Map.of()));
        for (int i = 0; i < wattHours.length; i++) {
            stops.add(new RouteStop("year", Set.of(), "A", i + 2, "lawn", 10 * i, 10 * i + 5, 0));
            work.add(Map.of("F", new TripRoute.FamilyWork(wattHours[i], 1)));
        }
        return new TripRoute("A", 1, 0, 1000, stops, work);
    }
}
