package depot.optimizer.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.finance.ReturnRate.Finding;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Internal rates of return and payback against published examples and sums done by hand. */
class ReturnRateTest {

    /** Documents print rates in per cent with four decimals. */
    private static final double PRINTED = 5e-7;

    // Spreadsheet IRR documentation: -70000 12000 15000 18000 21000 (from memory, recomputed), then 26000 (seen,
    // recomputed).
    @Test
    void ratesAreAsDocumented() {
        assertThat(rate(-70_000, 12_000, 15_000, 18_000, 21_000)).isCloseTo(-0.021245, within(PRINTED));
        assertThat(rate(-70_000, 12_000, 15_000, 18_000, 21_000, 26_000)).isCloseTo(0.086631, within(PRINTED));
    }

    @Test
    void yearsOfNothingAfterwardsChangeNothing() {
        assertThat(rate(-70_000, 12_000, 15_000, 18_000, 21_000, 26_000, 0, 0, 0))
                .isCloseTo(0.086631, within(PRINTED));
    }

    @Test
    void aSimpleRateIsExact() {
        assertThat(rate(-100, 110)).isCloseTo(0.1, within(1e-12));
        assertThat(rate(-100, 100)).isCloseTo(0, within(1e-12));
        assertThat(rate(-100, 5, 5, 5, 105)).isCloseTo(0.05, within(1e-12));
        assertThat(rate(-1, 50)).isCloseTo(49, within(1e-9));
    }

    @Test
    void withoutAChangeOfSignThereIsNone() {
        assertThat(ReturnRate.of(List.of(-100.0, -5.0, 0.0)).finding()).isEqualTo(Finding.NO_CHANGE_OF_SIGN);
        assertThat(ReturnRate.of(List.of(100.0, 5.0)).finding()).isEqualTo(Finding.NO_CHANGE_OF_SIGN);
        assertThat(ReturnRate.of(List.of(0.0, 0.0)))
                .isEqualTo(new ReturnRate(OptionalDouble.empty(), Finding.NO_CHANGE_OF_SIGN));
    }

    // By hand: -100 + 230 v - 132 v^2 is 0 at v = 1/1.1 and v = 1/1.2.
    @Test
    void twoRatesAreNone() {
        assertThat(ReturnRate.of(List.of(-100.0, 230.0, -132.0)))
                .isEqualTo(new ReturnRate(OptionalDouble.empty(), Finding.SEVERAL));
    }

    // By hand: -100 + 100 v - 132 v^2 is below 0 for every v.
    @Test
    void aSumThatIsNeverZeroHasNone() {
        assertThat(ReturnRate.of(List.of(-100.0, 100.0, -132.0)).finding()).isEqualTo(Finding.OUT_OF_RANGE);
    }

    @Test
    void paybackIsEvenWithinItsYear() {
        // By hand: 100 less 40, 40, then 20 of 80.
        assertThat(Payback.years(List.of(-100.0, 40.0, 40.0, 80.0))).hasValue(2.25);
        assertThat(Payback.years(List.of(-100.0, 100.0))).hasValue(1);
        assertThat(Payback.years(List.of(0.0, -5.0))).hasValue(0);
        assertThat(Payback.years(List.of(-100.0, 99.0))).isEmpty();
    }

    private static double rate(double... flows) {
        ReturnRate found = ReturnRate.of(Arrays.stream(flows).boxed().toList());
        assertThat(found.finding()).isEqualTo(Finding.FOUND);
        return found.rate().orElseThrow();
    }
}
