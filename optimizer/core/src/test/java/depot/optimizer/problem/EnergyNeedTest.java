package depot.optimizer.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The planned energy against quantiles of the normal distribution. */
class EnergyNeedTest {

    /** Normal quantiles are given with five decimals. */
    private static final Offset<Double> QUANTILE = within(0.00001);
    /** Nothing but rounding of doubles, on some hundred watt-hours. */
    private static final Offset<Double> ROUNDING = within(1e-6);

    /** Coefficient of variation of a lognormal with sigma 0.5: sqrt(exp(0.25) - 1). */
    private static final double SPREAD = Math.sqrt(Math.expm1(0.25));

    private static final double SIGMA = 0.5;
    private static final double MEAN = 400;
    /** Median of a lognormal: mean x exp(-sigma^2 / 2). */
    private static final double MEDIAN = MEAN * Math.exp(-0.125);

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "0.5, 0", // symmetry of the normal distribution
        "0.90, 1.28155", // normal distribution tables (NIST handbook 1.3.6.7.1 inverted), from memory
        "0.95, 1.64485", // as above, from memory
        "0.975, 1.95996", // as above, from memory
        "0.99, 2.32635", // as above, from memory
    })
    void oneStopIsLognormal(double quantile, double z) {
        double need = new EnergyNeed(quantile, SPREAD).of(new double[] {MEAN});

        assertThat(Math.log(need / MEDIAN) / SIGMA).isEqualTo(z, QUANTILE);
    }

    @Test
    void withoutSpreadTheNeedIsTheMean() {
        assertThat(new EnergyNeed(0.99, 0).of(new double[] {120, 80.5})).isEqualTo(200.5, ROUNDING);
    }

    @Test
    void noStopsNeedNothing() {
        assertThat(new EnergyNeed(0.99, SPREAD).of(new double[0])).isZero();
        assertThat(new EnergyNeed(0.99, SPREAD).of(new double[] {0, 0})).isZero();
    }

    @Test
    void twoEqualStopsSpreadLessByTheRootOfTwo() {
        double two = new EnergyNeed(0.95, SPREAD).of(new double[] {MEAN, MEAN});
        double one = new EnergyNeed(0.95, SPREAD / Math.sqrt(2)).of(new double[] {2 * MEAN});

        assertThat(two).isEqualTo(one, ROUNDING);
        assertThat(two).isLessThan(2 * new EnergyNeed(0.95, SPREAD).of(new double[] {MEAN}));
    }

    @Test
    void aStopWithoutWorkChangesNothing() {
        EnergyNeed need = new EnergyNeed(0.95, SPREAD);

        assertThat(need.of(new double[] {MEAN, 0})).isEqualTo(need.of(new double[] {MEAN}), ROUNDING);
    }
}
