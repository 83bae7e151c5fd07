package depot.optimizer.dictionary;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The values a number may take, each end open, closed or absent.
 *
 * @param low lower end, empty: none
 * @param lowEnd whether the lower end itself is allowed
 * @param high upper end, empty: none
 * @param highEnd whether the upper end itself is allowed
 */
public record Range(Optional<BigDecimal> low, End lowEnd, Optional<BigDecimal> high, End highEnd) {

    /** Whether an end of a range belongs to it. */
    public enum End {
        /** The end is allowed. */
        CLOSED,
        /** The end is not allowed. */
        OPEN
    }

    /** {@code low} or more. */
    static Range atLeast(String low) {
        return new Range(Optional.of(new BigDecimal(low)), End.CLOSED, Optional.empty(), End.CLOSED);
    }

    /** More than {@code low}. */
    static Range above(String low) {
        return new Range(Optional.of(new BigDecimal(low)), End.OPEN, Optional.empty(), End.CLOSED);
    }

    /** The same range, and at most {@code high}. */
    Range atMost(String high) {
        return new Range(low, lowEnd, Optional.of(new BigDecimal(high)), End.CLOSED);
    }

    /** The same range, and less than {@code high}. */
    Range below(String high) {
        return new Range(low, lowEnd, Optional.of(new BigDecimal(high)), End.OPEN);
    }

    /** Whether a number lies in the range. */
    public boolean contains(BigDecimal value) {
        boolean lowHolds = low.map(value::compareTo)
                .map(order -> order > 0 || (order == 0 && lowEnd == End.CLOSED))
                .orElse(true);
        boolean highHolds = high.map(value::compareTo)
                .map(order -> order < 0 || (order == 0 && highEnd == End.CLOSED))
                .orElse(true);
        return lowHolds && highHolds;
    }

    /** The range in words, as documentation and hints print it. */
    public String words() {
        String lowWords = low.map(value ->
                        lowEnd == End.CLOSED ? value.toPlainString() + " or more" : "above " + value.toPlainString())
                .orElse("");
        String highWords = high.map(value -> (highEnd == End.CLOSED ? "at most " : "below ") + value.toPlainString())
                .orElse("");
        if (low.isPresent() && high.isPresent() && lowEnd == End.CLOSED && highEnd == End.CLOSED) {
            return low.get().toPlainString() + " to " + high.get().toPlainString();
        }
        return low.isPresent() && high.isPresent() ? lowWords + ", " + highWords : lowWords + highWords;
    }
}
