package depot.optimizer.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Power of common outlets. */
class ElectricityTest {

    /** Outlet powers are whole volt-amperes. */
    private static final Offset<Double> WHOLE_VA = within(0.5);

    @ParameterizedTest(name = "{0} V, {1} phase(s), {2} A")
    @CsvSource({
        "400, 3, 16, 11085", // sqrt(3) x 400 x 16, the "11 kW" outlet; common practice, no source, recomputed
        "400, 3, 32, 22170", // sqrt(3) x 400 x 32, the "22 kW" outlet; common practice, no source, recomputed
        "230, 1, 13, 2990", // fused plug of BS 1363, from memory
        "230, 1, 16, 3680", // blue plug of IEC 60309, from memory
    })
    void outletCarries(double volts, int phases, double amps, double va) {
        assertThat(Electricity.vaPerAmp(volts, phases) * amps).isEqualTo(va, WHOLE_VA);
    }

    @Test
    void continuousLoadOfAnAmericanOutletIsFourFifths() {
        // 120 V x 15 A x 0.8: NEMA 5-15 on a 15 A breaker, from memory
        double va = Electricity.vaPerAmp(120, 1) * 15 * Electricity.SUPPLY_CONTINUOUS_FACTOR;

        assertThat(va).isEqualTo(1440, WHOLE_VA);
    }

    @ParameterizedTest
    @CsvSource({"0", "2", "4", "-1"})
    void otherNumbersOfPhasesAreRefused(int phases) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Electricity.vaPerAmp(230, phases))
                .withMessageContaining("phases must be 1 or 3");
    }
}
