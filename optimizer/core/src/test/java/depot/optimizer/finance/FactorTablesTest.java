package depot.optimizer.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Present costs against the tables of engineering economy. */
class FactorTablesTest {

    /** Half of the last printed digit. */
    private static final double FOUR_DIGITS = 5e-5;

    private static final double EXACT = 1e-9;

    private static PresentCost of(int years, double rate) {
        return new PresentCost(years, rate, 0);
    }

    // Factor table 8 %, n = 10 of any engineering-economy text (from memory, recomputed).
    @Test
    void factorsAtEightPercentAreAsPrinted() {
        PresentCost money = of(10, 0.08);

        assertThat(1 / money.factor(10)).as("F/P").isCloseTo(2.1589, within(FOUR_DIGITS));
        assertThat(money.factor(10)).as("P/F").isCloseTo(0.4632, within(FOUR_DIGITS));
        assertThat(money.annuity()).as("P/A").isCloseTo(6.7101, within(FOUR_DIGITS));
        assertThat(1 / money.annuity()).as("A/P").isCloseTo(0.14903, within(FOUR_DIGITS / 10));
        assertThat(money.annuity() / money.factor(10)).as("F/A").isCloseTo(14.4866, within(FOUR_DIGITS));
        assertThat(money.factor(10) / money.annuity()).as("A/F").isCloseTo(0.06903, within(FOUR_DIGITS / 10));
    }

    // Factor table 3 %, n = 10, arithmetic gradient: 0 at the end of year 1, 1 of year 2, 9 of year 10 (seen,
    // recomputed).
    @Test
    void gradientFactorsAtThreePercentAreAsPrinted() {
        PresentCost money = of(10, 0.03);
        double value = money.presentValue(List.of(0.0, 0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0));

        assertThat(value).as("P/G").isCloseTo(36.3088, within(FOUR_DIGITS));
        assertThat(value / money.annuity()).as("A/G").isCloseTo(4.2565, within(FOUR_DIGITS));
        assertThat(money.annuity() / money.factor(10)).as("F/A").isCloseTo(11.4639, within(FOUR_DIGITS));
        assertThat(money.factor(10) / money.annuity()).as("A/F").isCloseTo(0.08723, within(FOUR_DIGITS / 10));
        assertThat(1 / money.annuity()).as("A/P").isCloseTo(0.11723, within(FOUR_DIGITS / 10));
    }

    // Factor table 3 % (seen, recomputed).
    @Test
    void factorsAtThreePercentAreAsPrinted() {
        assertThat(1 / of(10, 0.03).factor(10)).as("F/P").isCloseTo(1.3439, within(FOUR_DIGITS));
        assertThat(of(10, 0.03).factor(10)).as("P/F").isCloseTo(0.7441, within(FOUR_DIGITS));
        assertThat(of(10, 0.03).annuity()).as("P/A").isCloseTo(8.5302, within(FOUR_DIGITS));
        assertThat(of(25, 0.03).annuity()).as("P/A, 25 years").isCloseTo(17.4131, within(FOUR_DIGITS));
    }

    // Spreadsheet NPV documentation (seen, recomputed): 10 %, -10000 3000 4200 6800 at the ends of years 1 to 4.
    @Test
    void netPresentValueIsAsDocumented() {
        List<Double> flows = List.of(0.0, -10_000.0, 3_000.0, 4_200.0, 6_800.0);

        assertThat(of(4, 0.10).presentValue(flows)).isCloseTo(1188.4434, within(FOUR_DIGITS));
    }

    // Textbook homework (seen, recomputed): 15 %, 20000 and 8500 a year, worth 5000 after 3 years; 15000, 7000 and 3000
    // after 2.
    @Test
    void equivalentYearlyCostsOfTwoMachinesAreAsInTheTextbook() {
        PresentCost three = of(3, 0.15);
        PresentCost two = of(2, 0.15);

        assertThat((20_000 - 5_000 * three.factor(3)) / three.annuity() + 8_500).isCloseTo(15_819.65, within(0.005));
        assertThat((15_000 - 3_000 * two.factor(2)) / two.annuity() + 7_000).isCloseTo(14_831.40, within(0.005));
    }

    @Test
    void withoutInterestAYearIsAYear() {
        assertThat(of(7, 0).annuity()).isCloseTo(7, within(EXACT));
        assertThat(of(7, 0).factor(3)).isCloseTo(1, within(EXACT));
    }

    @Test
    void pricesThatGrowLikeInterestKeepTheirPresentValue() {
        assertThat(new PresentCost(10, 0.04, 0.04).electricityAnnuity()).isCloseTo(10 / 1.04, within(EXACT));
        assertThat(new PresentCost(10, 0.04, 0.04).annuity())
                .isCloseTo(of(10, 0.04).annuity(), within(EXACT));
    }

    @Test
    void aPieceThatLastsLongerKeepsTheRestOfItsLife() {
        // Bought for 100, 8 of 10 years used up.
        assertThat(of(8, 0).newPiece(100, 20, 10)).isCloseTo(120 - 20, within(EXACT));
    }

    @Test
    void aPieceThatIsReplacedInTimeIsBoughtAgain() {
        // Life 4: bought in years 0, 4 and 8; the last has two of four years left.
        assertThat(of(10, 0).newPiece(100, 20, 4)).isCloseTo(320 - 50, within(EXACT));
        assertThat(of(10, 0.08).newPiece(100, 0, 4))
                .isCloseTo(
                        100 + 100 / Math.pow(1.08, 4) + 100 / Math.pow(1.08, 8) - 50 / Math.pow(1.08, 10),
                        within(EXACT));
    }

    @Test
    void aPieceThatEndsWithTheHorizonIsNotBoughtAgain() {
        assertThat(of(10, 0.05).newPiece(100, 0, 10)).isCloseTo(100, within(EXACT));
        assertThat(of(10, 0).newPiece(100, 0, 5)).isCloseTo(200, within(EXACT));
    }

    @Test
    void anOwnedPieceCostsOnlyItsFollowers() {
        assertThat(of(10, 0).ownedPiece(100, 12)).isZero();
        assertThat(of(10, 0).ownedPiece(100, 10)).isZero();
        assertThat(of(10, 0).ownedPiece(100, 4)).isCloseTo(200 - 50, within(EXACT));
    }

    @Test
    void aStockedPackCostsTheInterestOnItsPrice() {
        assertThat(of(10, 0.08).stockedPack(100)).isCloseTo(53.68, within(0.005));
        assertThat(of(10, 0).stockedPack(100)).isZero();
    }
}
