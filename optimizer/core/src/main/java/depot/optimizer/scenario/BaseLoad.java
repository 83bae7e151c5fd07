package depot.optimizer.scenario;

import java.time.DayOfWeek;
import java.util.Optional;
import java.util.Set;

/**
 * What a circuit, or the depot's supply beside its circuits, already feeds in a span of the day.
 *
 * @param circuit empty: the load sits on the supply, outside the listed circuits
 * @param fromMinute start, minutes after midnight
 * @param toMinute end, up to 1440, later than the start
 * @param amps current at the voltage of the circuit or supply
 */
public record BaseLoad(
        String depot, Optional<String> circuit, Set<DayOfWeek> days, int fromMinute, int toMinute, double amps) {}
