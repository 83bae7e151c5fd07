package depot.optimizer.replay;

import depot.optimizer.scenario.BaseLoad;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the circuits and the supply of a depot feed beside the chargers, in amperes by minute. Rows that overlap add up. */
final class BaseLoads {
    static final int DAY = 1440;

    private final List<BaseLoad> rows;
    private final Map<Key, double[]> days = new HashMap<>();

    private record Key(Optional<String> circuit, DayOfWeek day) {}

    BaseLoads(List<BaseLoad> rows) {
        this.rows = List.copyOf(rows);
    }

    /** Amperes by minute of the cycle that starts at {@code start} on {@code day} and runs into the next weekday. */
    double[] cycle(Optional<String> circuit, DayOfWeek day, int start) {
        double[] today = day(circuit, day);
        double[] tomorrow = day(circuit, day.plus(1));
        double[] cycle = new double[DAY];
        for (int i = 0; i < DAY; i++) {
            int minute = start + i;
            cycle[i] = minute < DAY ? today[minute] : tomorrow[minute - DAY];
        }
        return cycle;
    }

    /** Highest of the week. */
    double peak(Optional<String> circuit) {
        double peak = 0;
        for (DayOfWeek day : DayOfWeek.values()) {
            peak = Math.max(peak, Arrays.stream(day(circuit, day)).max().orElse(0));
        }
        return peak;
    }

    /** Amperes by minute after midnight. */
    double[] day(Optional<String> circuit, DayOfWeek day) {
        return days.computeIfAbsent(new Key(circuit, day), this::draw);
    }

    /** Rows of a weekday that touch [from, to). */
    List<BaseLoad> touching(DayOfWeek day, int from, int to) {
        return rows.stream()
                .filter(row -> row.days().contains(day) && row.fromMinute() < to && row.toMinute() > from)
                .toList();
    }

    private double[] draw(Key key) {
        double[] amps = new double[DAY];
        for (BaseLoad row : rows) {
            if (row.circuit().equals(key.circuit()) && row.days().contains(key.day())) {
                for (int t = row.fromMinute(); t < Math.min(DAY, row.toMinute()); t++) {
                    amps[t] += row.amps();
                }
            }
        }
        return amps;
    }
}
