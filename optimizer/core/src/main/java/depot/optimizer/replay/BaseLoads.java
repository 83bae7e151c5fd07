package depot.optimizer.replay;

import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the circuits and the supply of a depot feed beside the chargers, by minute. Rows that overlap add up. What was worked out once is kept. */
final class BaseLoads {
    static final int DAY = 1440;

    private final List<BaseLoad> rows;
    private final Map<Optional<String>, Line> lines = new LinkedHashMap<>();
    private final Map<Key, double[]> days = new HashMap<>();
    private final Map<Cycle, double[]> watts = new HashMap<>();

    private record Key(Optional<String> circuit, DayOfWeek day) {}

    private record Cycle(DayOfWeek day, int start) {}

    /**
     * Of a depot.
     *
     * @param rows its own, those of circuits and of the supply itself
     */
    BaseLoads(Depot depot, Collection<Circuit> circuits, List<BaseLoad> rows) {
        this.rows = List.copyOf(rows);
        lines.put(Optional.empty(), Line.of(depot));
        circuits.forEach(circuit -> lines.put(Optional.of(circuit.id()), Line.of(circuit)));
    }

    /**
     * Watts of all of them by minute of the cycle. The supply's own load has no power factor and counts with 1.
     *
     * @param day on which the cycle starts
     * @param start minute after midnight
     */
    double[] watts(DayOfWeek day, int start) {
        return watts.computeIfAbsent(new Cycle(day, start), cycle -> {
                    double[] sum = new double[DAY];
                    lines.forEach((circuit, line) -> {
                        double[] amps = cycle(circuit, day, start);
                        for (int i = 0; i < DAY; i++) {
                            sum[i] += line.watts(amps[i]);
                        }
                    });
                    return sum;
                })
                .clone();
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
