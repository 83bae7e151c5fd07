package depot.optimizer.model;

import depot.optimizer.problem.ChargeLevel;
import depot.optimizer.problem.ChargerOption.Fit;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.Slice;

/** What energy costs that is drawn from a given minute on without waiting. */
final class PlainPrice {

    private final DayKind day;

    PlainPrice(DayKind day) {
        this.day = day;
    }

    /** Price of charging one empty pack to a level from a minute on, following the two stages of the charge. */
    double ofPack(Fit fit, ChargeLevel level, int from) {
        int at80 = from + fit.minutesTo80();
        double cost = 0.8 * fit.gridWh() / 1000 * mean(from, at80);
        if (level == ChargeLevel.FULL) {
            cost += 0.2 * fit.gridWh() / 1000 * mean(at80, from + fit.minutesToFull());
        }
        return cost;
    }

    /** Mean price per kWh between two minutes; the part past the end of the cycle takes the last price. */
    double mean(int from, int to) {
        double sum = 0;
        int counted = 0;
        double last = 0;
        for (Slice slice : day.slices()) {
            int minutes = Math.min(to, slice.toMinute()) - Math.max(from, slice.fromMinute());
            last = slice.pricePerKwh().doubleValue();
            if (minutes > 0) {
                sum += minutes * last;
                counted += minutes;
            }
        }
        return (sum + (to - from - counted) * last) / (to - from);
    }

    /** Whether one price holds between two minutes. */
    boolean flat(int from, int to) {
        return day.slices().stream()
                        .filter(slice -> slice.fromMinute() < to && slice.toMinute() > from)
                        .map(slice -> slice.pricePerKwh().stripTrailingZeros())
                        .distinct()
                        .count()
                <= 1;
    }
}
