package depot.optimizer.tariff;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Amounts of money as they are compared and written. */
final class Amounts {
    /** Records hold sums worked out in binary, such as 0.16199999999999998; nine decimals keep all that a bill can tell. */
    private static final int DECIMALS = 9;

    private Amounts() {}

    /** At most nine decimals and no trailing zeros, so that equal amounts are equal as objects. */
    static BigDecimal plain(BigDecimal amount) {
        BigDecimal rounded = amount.setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO : stripped(rounded);
    }

    private static BigDecimal stripped(BigDecimal amount) {
        BigDecimal stripped = amount.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
