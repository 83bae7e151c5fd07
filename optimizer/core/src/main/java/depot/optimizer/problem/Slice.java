package depot.optimizer.problem;

import java.math.BigDecimal;
import java.util.List;

/**
 * A span in which neither the price nor a base load changes and no pack is moved.
 *
 * @param fromMinute start
 * @param toMinute end, later
 * @param supplyBaseVa base load of the whole depot, which the supply has to carry
 * @param supplyBaseWatts the same load as the meter sees it, which is billed
 * @param circuitBaseAmps base load of each circuit, in the order of the problem's circuits
 */
public record Slice(
        int fromMinute,
        int toMinute,
        BigDecimal pricePerKwh,
        double supplyBaseVa,
        double supplyBaseWatts,
        List<Double> circuitBaseAmps) {

    /** Length in hours. */
    public double hours() {
        return (toMinute - fromMinute) / 60.0;
    }

    /** Whether the slice lies within a span. */
    public boolean within(int from, int to) {
        return fromMinute >= from && toMinute <= to;
    }
}
