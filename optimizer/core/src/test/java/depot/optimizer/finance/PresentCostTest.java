package depot.optimizer.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Present costs against printed factor tables and sums done by hand. */
class PresentCostTest {

    /** Tables print four decimals. */
    private static final Offset<Double> TABLE = within(0.00005);
    /** Amounts around 100 from four-decimal factors. */
    private static final Offset<Double> BY_HAND = within(0.01);
    /** Nothing but rounding of doubles. */
    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final double PRICE = 100;
    private static final double INSTALL = 20;

    /** 10 years at 8 %. P/F of 4 years .7350, of 8 years .5403 (compound interest table, from memory, recomputed). */
    private static final PresentCost TEN_YEARS = new PresentCost(10, 0.08, 0);

    @ParameterizedTest(name = "{0} years at {1}")
    @CsvSource({
        "10, 0.08, 0.4632", // compound interest table 8 %, from memory, recomputed
        "10, 0.03, 0.7441", // compound interest table 3 %, from memory, recomputed
    })
    void presentValueOfOneAmountIsThatOfTheTable(int years, double rate, double tableFactor) {
        assertThat(new PresentCost(years, rate, 0).factor(years)).isEqualTo(tableFactor, TABLE);
    }

    @ParameterizedTest(name = "{0} years at {1}")
    @CsvSource({
        "10, 0.08, 6.7101", // compound interest table 8 %, from memory, recomputed
        "10, 0.03, 8.5302", // compound interest table 3 %, from memory, recomputed
        "25, 0.03, 17.4131", // compound interest table 3 % as in Blank & Tarquin, seen
    })
    void presentValueOfYearlyAmountsIsThatOfTheTable(int years, double rate, double tableFactor) {
        assertThat(new PresentCost(years, rate, 0).annuity()).isEqualTo(tableFactor, TABLE);
    }

    @Test
    void withoutDiscountEveryYearCountsOnce() {
        assertThat(new PresentCost(7, 0, 0).annuity()).isEqualTo(7, ROUNDING);
        assertThat(new PresentCost(7, 0, 0).factor(7)).isEqualTo(1, ROUNDING);
    }

    @Test
    void newPieceThatLastsTheHorizonCostsItsPriceAndMounting() {
        assertThat(TEN_YEARS.newPiece(PRICE, INSTALL, 10)).isEqualTo(120, ROUNDING);
    }

    @Test
    void newPieceThatLastsLongerIsWorthItsRemainingLife() {
        // By hand: 120 - 100 x 15/25 x .4632
        assertThat(TEN_YEARS.newPiece(PRICE, INSTALL, 25)).isEqualTo(92.21, BY_HAND);
    }

    @Test
    void newPieceThatLastsLessIsBoughtAgain() {
        // By hand: bought again after 4 and 8 years, 2 of 4 years left: 120 + 73.50 + 54.03 - 100 x 2/4 x .4632
        assertThat(TEN_YEARS.newPiece(PRICE, INSTALL, 4)).isEqualTo(224.37, BY_HAND);
    }

    @Test
    void newPieceWhoseLifeDividesTheHorizonLeavesNothing() {
        // By hand: P/F of 5 years .6806 (compound interest table 8 %, from memory, recomputed)
        assertThat(TEN_YEARS.newPiece(PRICE, INSTALL, 5)).isEqualTo(188.06, BY_HAND);
    }

    @Test
    void ownedPieceThatLastsCostsNothing() {
        assertThat(TEN_YEARS.ownedPiece(PRICE, 10)).isZero();
        assertThat(TEN_YEARS.ownedPiece(PRICE, 25)).isZero();
    }

    @Test
    void ownedPieceThatLastsLessCostsThoseThatFollow() {
        // By hand: 73.50 + 54.03 - 23.16
        assertThat(TEN_YEARS.ownedPiece(PRICE, 4)).isEqualTo(104.37, BY_HAND);
    }

    @Test
    void stockedPackCostsItsPriceLessItsPriceAtTheEnd() {
        // By hand: 100 x (1 - .4632)
        assertThat(TEN_YEARS.stockedPack(PRICE)).isEqualTo(53.68, BY_HAND);
    }

    @Test
    void electricityGrowsFromTheFirstYearEnd() {
        // By hand, 3 years at 10 % growing by 5 %: 1/1.1 + 1.05/1.21 + 1.1025/1.331
        assertThat(new PresentCost(3, 0.10, 0.05).electricityAnnuity()).isEqualTo(2.6052, TABLE);
    }

    @Test
    void electricityThatGrowsWithTheDiscountRateCountsEveryYearAlike() {
        // By hand: n / (1 + i)
        assertThat(new PresentCost(3, 0.10, 0.10).electricityAnnuity()).isEqualTo(3 / 1.1, ROUNDING);
    }

    @Test
    void growthOfElectricityLeavesOtherYearlyAmountsAlone() {
        assertThat(new PresentCost(10, 0.08, 0.05).annuity()).isEqualTo(TEN_YEARS.annuity(), ROUNDING);
    }
}
