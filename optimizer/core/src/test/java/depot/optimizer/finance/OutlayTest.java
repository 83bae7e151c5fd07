package depot.optimizer.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.finance.Payment.Reason;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The payments of an outlay have its present cost, whatever horizon, rates and lives. */
class OutlayTest {

    @ParameterizedTest
    @CsvSource({
        "1, 0, 0",
        "5, 0, 0",
        "8, 0.05, 0.02",
        "10, 0.08, -0.03",
        "40, 0.12, 0.2",
        "7, 1, 0.5",
        "13, 0.031, 0.031"
    })
    void paymentsHaveThePresentCost(int horizon, double rate, double growth) {
        PresentCost money = new PresentCost(horizon, rate, growth);
        for (double life : new double[] {0.3, 1, 2.5, 4, 5, 8, 10, 39.5, 100}) {
            assertPaid(money, new Outlay.Piece(812.35, 41.7, life));
            assertPaid(money, new Outlay.OwnedPiece(812.35, life));
            assertPaid(money, new Outlay.SinglePiece(-812.35, life));
        }
        assertPaid(money, new Outlay.StockedPack(300));
        assertPaid(money, new Outlay.Building(4_000));
        assertPaid(money, new Outlay.EveryYear(17.5));
        assertPaid(money, new Outlay.Electricity(0.31));
    }

    private static void assertPaid(PresentCost money, Outlay outlay) {
        double sum = outlay.payments(money).stream()
                .mapToDouble(payment -> payment.amount() * money.factor(payment.years()))
                .sum();
        assertThat(sum).as("%s over %s", outlay, money).isCloseTo(outlay.presentCost(money), within(1e-8));
    }

    @Test
    void aPieceIsPaidForWhenItsForerunnerEnds() {
        List<Payment> payments = new Outlay.Piece(100, 20, 4).payments(new PresentCost(10, 0.05, 0));

        assertThat(payments)
                .containsExactly(
                        new Payment(Reason.PURCHASE, 0, 100),
                        new Payment(Reason.INSTALLATION, 0, 20),
                        new Payment(Reason.REPLACEMENT, 4, 100),
                        new Payment(Reason.REPLACEMENT, 8, 100),
                        new Payment(Reason.VALUE_AT_END, 10, -50));
    }

    @Test
    void anOwnedPieceThatOutlivesTheHorizonPaysNothing() {
        assertThat(new Outlay.OwnedPiece(100, 12).payments(new PresentCost(10, 0.05, 0)))
                .isEmpty();
    }

    @Test
    void aSinglePieceIsNeverFollowedAndIsWorthWhatIsLeftOfItsLife() {
        PresentCost money = new PresentCost(10, 0.05, 0);

        assertThat(new Outlay.SinglePiece(100, 4).payments(money))
                .containsExactly(new Payment(Reason.PURCHASE, 0, 100), new Payment(Reason.VALUE_AT_END, 10, -0.0));
        assertThat(new Outlay.SinglePiece(-100, 16).payments(money))
                .containsExactly(new Payment(Reason.PURCHASE, 0, -100), new Payment(Reason.VALUE_AT_END, 10, 37.5));
    }
}
