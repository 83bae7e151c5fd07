package depot.optimizer.replay;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.scenario.TariffTerms;
import java.time.DayOfWeek;
import java.util.Arrays;

/**
 * The demand that the plan pays for where the tariff bills it: the highest average of the base load alone, from whichever weekday, and on top of it
 * the most that any planned day of the season adds.
 */
final class DemandCeiling {
    private final Yard yard;
    private final int intervalMinutes;
    private final double baseWatts;

    DemandCeiling(Yard yard) {
        this.yard = yard;
        intervalMinutes = yard.tables()
                .terms()
                .filter(terms -> terms.demandPricePerKwMonth().signum() > 0)
                .map(TariffTerms::demandMinutes)
                .orElse(0);
        double alone = 0;
        if (billed()) {
            for (DayOfWeek day : DayOfWeek.values()) {
                alone = Math.max(alone, average(yard.baseWatts(day)));
            }
        }
        baseWatts = alone;
    }

    /** Whether the tariff bills demand at all. */
    boolean billed() {
        return intervalMinutes > 0;
    }

    private double average(double[] watts) {
        return DemandMeter.highestAverage(watts, yard.tables().startMinute(), intervalMinutes);
    }

    /** What a day's draw, by minute of the cycle and with the base load in it, adds to the bill of the base load alone. */
    double aboveBaseKw(double[] watts) {
        return Math.max(0, average(watts) - baseWatts) / 1000;
    }

    /** What the plan pays for above the base load's bill on a day: where it stands for several seasons, in the one that pays for least. */
    double paidKw(DayCase day) {
        return day.occurrences().stream()
                .map(SeasonDay::season)
                .distinct()
                .mapToDouble(this::paidKw)
                .min()
                .orElse(0);
    }

    private double paidKw(String season) {
        return yard.plan().days().stream()
                .filter(day -> day.occurrences().stream()
                        .anyMatch(occurrence -> occurrence.season().equals(season)))
                .mapToDouble(DayPlan::demandKw)
                .max()
                .orElse(0);
    }

    /** Watts by minute of the cycle that charging may draw beside the base load and the banks; unlimited where demand is not billed. */
    double[] roomForCharging(DayCase day, double[][] bankWatts) {
        double[] room = new double[BaseLoads.DAY];
        if (!billed()) {
            Arrays.fill(room, Double.POSITIVE_INFINITY);
            return room;
        }
        double[] base = yard.baseWatts(day.first().day());
        double limit = baseWatts + 1000 * paidKw(day);
        for (int i = 0; i < room.length; i++) {
            room[i] = limit - base[i];
            for (double[] circuit : bankWatts) {
                room[i] -= circuit[i];
            }
        }
        return room;
    }
}
