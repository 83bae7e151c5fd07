package depot.optimizer.report.compare;

import depot.optimizer.replay.DayReplay.Outcome;
import depot.optimizer.report.table.Words;
import java.util.OptionalDouble;

/**
 * How near to its limits a run's replay came, over all depots and kinds of day.
 *
 * @param days of a year, those of all depots added
 * @param metDays of them met
 * @param shortDays of them short as planned
 * @param failedDays of them on which a rule is broken
 * @param leastWattHours least energy left in the packs of a trip
 * @param leastMinutes least time between the end of a charge and the moment it is collected
 * @param highestShare of a circuit's or supply's limit, in per cent
 */
record RunRisk(
        double days,
        double metDays,
        double shortDays,
        double failedDays,
        OptionalDouble leastWattHours,
        OptionalDouble leastMinutes,
        OptionalDouble highestShare) {

    /** From replay.csv. */
    static RunRisk of(RunTable replay) throws UnreadableRunException {
        return new RunRisk(
                days(replay, ""),
                days(replay, Words.of(Outcome.MET)),
                days(replay, Words.of(Outcome.SHORT)),
                days(replay, Words.of(Outcome.FAILED)),
                least(replay, "least_energy_left_wh", 1),
                least(replay, "least_margin_minutes", 1),
                negated(least(replay, "highest_share_of_a_limit_percent", -1)));
    }

    private static double days(RunTable replay, String result) throws UnreadableRunException {
        double days = 0;
        for (int row = 0; row < replay.size(); row++) {
            if (result.isEmpty() || replay.text(row, "result").equals(result)) {
                days += replay.number(row, "days_per_year");
            }
        }
        return days;
    }

    private static OptionalDouble least(RunTable replay, String column, int sign) throws UnreadableRunException {
        OptionalDouble least = OptionalDouble.empty();
        for (int row = 0; row < replay.size(); row++) {
            OptionalDouble value = replay.find(row, column);
            if (value.isPresent()) {
                double signed = sign * value.getAsDouble();
                least = OptionalDouble.of(Math.min(signed, least.orElse(signed)));
            }
        }
        return least;
    }

    private static OptionalDouble negated(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(-value.getAsDouble()) : value;
    }
}
