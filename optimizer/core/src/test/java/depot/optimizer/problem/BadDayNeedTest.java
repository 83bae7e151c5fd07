package depot.optimizer.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The energy to plan for, against quantiles from outside the project. */
class BadDayNeedTest {

    /** Half of the last printed digit. */
    private static final double PRINTED = 5e-6;

    private static final double EXACT = 1e-12;

    /** Spread of a lognormal with sigma 1: variance over squared mean = e - 1. */
    private static final double SPREAD_OF_SIGMA_ONE = Math.sqrt(Math.E - 1);

    /** Mean of the lognormal (0, 1). */
    private static final double MEAN = Math.exp(0.5);

    // NIST e-Handbook 1.3.6.7.1 (from memory, recomputed): the lognormal (0, 1) is the exponential of the normal.
    @ParameterizedTest
    @CsvSource({"0.90, 1.28155", "0.95, 1.64485", "0.975, 1.95996", "0.99, 2.32635"})
    void theLogarithmFollowsTheNormalQuantiles(double quantile, double z) {
        double need = new EnergyNeed(quantile, SPREAD_OF_SIGMA_ONE).of(new double[] {MEAN});

        assertThat(Math.log(need)).isCloseTo(z, within(PRINTED));
    }

    // exp(mu + z sigma) (recomputed).
    @Test
    void lognormalQuantileIsAsPrinted() {
        assertThat(new EnergyNeed(0.95, SPREAD_OF_SIGMA_ONE).of(new double[] {MEAN}))
                .isCloseTo(5.18025, within(PRINTED));
    }

    // The same, (1, 0.5) -> 6.18685 (recomputed).
    @Test
    void lognormalQuantileOfAnotherSpreadIsAsPrinted() {
        double spread = Math.sqrt(Math.expm1(0.25));

        assertThat(new EnergyNeed(0.95, spread).of(new double[] {Math.exp(1 + 0.125)}))
                .isCloseTo(6.18685, within(PRINTED));
    }

    @Test
    void withoutSpreadTheNeedIsTheMean() {
        assertThat(new EnergyNeed(0.99, 0).of(new double[] {300, 500})).isCloseTo(800, within(EXACT));
    }

    @Test
    void noWorkNeedsNothing() {
        assertThat(new EnergyNeed(0.99, 0.5).of(new double[] {0, 0})).isZero();
    }

    @Test
    void independentStopsEvenOut() {
        double one = new EnergyNeed(0.95, 0.4).of(new double[] {800});
        double four = new EnergyNeed(0.95, 0.4).of(new double[] {200, 200, 200, 200});
        double halfSpread = new EnergyNeed(0.95, 0.2).of(new double[] {800});

        assertThat(four).isLessThan(one).isCloseTo(halfSpread, within(1e-9 * halfSpread));
    }

    @Test
    void needsScaleWithTheirMeans() {
        EnergyNeed need = new EnergyNeed(0.9, 0.3);

        assertThat(need.of(new double[] {30, 70})).isCloseTo(need.of(new double[] {300, 700}) / 10, within(1e-9));
    }
}
