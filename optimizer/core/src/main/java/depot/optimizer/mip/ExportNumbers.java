package depot.optimizer.mip;

/** Numbers as both export formats write them. */
final class ExportNumbers {

    /** Below this every whole number is a double, and is written without a point or an exponent. */
    private static final double WHOLE = 1e15;

    private ExportNumbers() {}

    /**
     * As many digits as tell the number from its neighbours: whoever reads it gets the same number.
     *
     * @throws IllegalArgumentException if it is infinite or not a number
     */
    static String text(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(value + " cannot be exported as a number");
        }
        return Math.abs(value) < WHOLE && value == Math.rint(value)
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
