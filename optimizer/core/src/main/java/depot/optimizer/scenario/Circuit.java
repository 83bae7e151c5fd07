package depot.optimizer.scenario;

import java.math.BigDecimal;
import java.util.OptionalDouble;

/**
 * A circuit of a depot behind its own breaker.
 *
 * @param volts line-to-line voltage of a three-phase circuit, line voltage of a single-phase one
 * @param phases 1 or 3
 * @param breakerAmps rating of the breaker
 * @param outlets how many plugs fit
 * @param plugAmps limit of one plug's current, empty: none below the breaker's
 * @param continuousFactor share of the breaker rating that may be drawn for hours, 0 to 1
 * @param powerFactor of the chargers on it, 0 to 1
 * @param installCost price of building it, zero: it exists
 */
public record Circuit(
        String id,
        String depot,
        double volts,
        int phases,
        double breakerAmps,
        int outlets,
        OptionalDouble plugAmps,
        double continuousFactor,
        double powerFactor,
        BigDecimal installCost) {

    /** Whether the circuit has to be built before it can be used. */
    public boolean candidate() {
        return installCost.signum() > 0;
    }
}
