package depot.optimizer.finance;

import java.util.List;
import java.util.OptionalDouble;

/** How long it takes until what was received makes up for what was paid. */
public final class Payback {

    private Payback() {}

    /**
     * Years until the sum of the flows is no longer below 0, evenly within the year in which that happens.
     *
     * @param flows of the years 0, 1 and so on
     * @return empty: not within these years
     */
    public static OptionalDouble years(List<Double> flows) {
        double sum = 0;
        for (int year = 0; year < flows.size(); year++) {
            double before = sum;
            sum += flows.get(year);
            if (sum >= 0) {
                return OptionalDouble.of(year == 0 ? 0 : year - 1 + -before / flows.get(year));
            }
        }
        return OptionalDouble.empty();
    }
}
