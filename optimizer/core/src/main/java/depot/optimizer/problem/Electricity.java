package depot.optimizer.problem;

/** Conversions between amperes, volt-amperes and watts. */
public final class Electricity {

    /** Share of a supply's rating that may be drawn for hours: charging is a continuous load (NEC 210.20(A): 125 % the other way round). */
    public static final double SUPPLY_CONTINUOUS_FACTOR = 0.8;

    private Electricity() {}

    /**
     * Volt-amperes of one ampere: V on one phase, sqrt(3) V on three (V line to line).
     *
     * @throws IllegalArgumentException for any number of phases but 1 and 3
     */
    public static double vaPerAmp(double volts, int phases) {
        return switch (phases) {
            case 1 -> volts;
            case 3 -> Math.sqrt(3) * volts;
            default -> throw new IllegalArgumentException("phases must be 1 or 3, not " + phases);
        };
    }
}
