package depot.optimizer.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

/** Interest factors and present costs of pieces that are replaced. */
class DecimalMoneyTest {
    private static final DecimalMoney EIGHT = DecimalMoney.of(0.08, 0, 10);

    @Test
    void interestFactorsAreThoseOfTheTables() {
        // Any engineering-economy table, 8 %, n = 10 (from memory, recomputed).
        double single = EIGHT.endFactor().doubleValue();
        double annuity = EIGHT.annuity().doubleValue();

        assertThat(1 / single).as("F/P").isCloseTo(2.1589, within(5e-5));
        assertThat(single).as("P/F").isCloseTo(0.4632, within(5e-5));
        assertThat(single / annuity).as("A/F").isCloseTo(0.06903, within(5e-6));
        assertThat(annuity / single).as("F/A").isCloseTo(14.4866, within(5e-5));
        assertThat(1 / annuity).as("A/P").isCloseTo(0.14903, within(5e-6));
        assertThat(annuity).as("P/A").isCloseTo(6.7101, within(5e-5));
    }

    @Test
    void growthRaisesEveryYearAfterTheFirst() {
        // 2 % growth at 8 %: (1 - (1.02 / 1.08)^10) / (0.08 - 0.02).
        double expected = (1 - Math.pow(1.02 / 1.08, 10)) / 0.06;

        assertThat(DecimalMoney.of(0.08, 0.02, 10).growingAnnuity().doubleValue())
                .isCloseTo(expected, within(1e-12));
    }

    @Test
    void partsOfYearsAreDiscountedToo() {
        assertThat(EIGHT.factor(new BigDecimal("2.5")).doubleValue()).isCloseTo(Math.pow(1.08, -2.5), within(1e-15));
        assertThat(EIGHT.factor(new BigDecimal("3")).doubleValue()).isCloseTo(Math.pow(1.08, -3), within(1e-15));
    }

    @Test
    void aPieceThatLivesAsLongAsTheHorizonIsBoughtOnce() {
        assertThat(EIGHT.lifeCost(new BigDecimal("100"), new BigDecimal("7"), 10))
                .isEqualByComparingTo("107");
        assertThat(EIGHT.ownedLifeCost(new BigDecimal("100"), new BigDecimal("7"), 10))
                .isEqualByComparingTo("0");
    }

    @Test
    void aLongerLifeLeavesAResidualValueAndAShorterOneIsReplaced() {
        double v = 1 / 1.08;

        assertThat(EIGHT.lifeCost(BigDecimal.valueOf(100), BigDecimal.ZERO, 20).doubleValue())
                .isCloseTo(100 - 50 * Math.pow(v, 10), within(1e-10));
        // Bought in years 0, 4 and 8; two of the last one's four years are left.
        assertThat(EIGHT.lifeCost(BigDecimal.valueOf(100), BigDecimal.ZERO, 4).doubleValue())
                .isCloseTo(100 * (1 + Math.pow(v, 4) + Math.pow(v, 8) - 0.5 * Math.pow(v, 10)), within(1e-10));
    }

    @Test
    void withoutInterestMoneyKeepsItsValue() {
        DecimalMoney plain = DecimalMoney.of(0, 0, 3);

        assertThat(plain.annuity()).isEqualByComparingTo("3");
        assertThat(plain.lifeCost(new BigDecimal("90"), BigDecimal.ZERO, 1.5)).isEqualByComparingTo("180");
        assertThat(plain.lifeCost(new BigDecimal("90"), BigDecimal.ZERO, 2)).isEqualByComparingTo("135");
    }
}
