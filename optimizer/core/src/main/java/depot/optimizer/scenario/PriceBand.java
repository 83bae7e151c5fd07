package depot.optimizer.scenario;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.Optional;
import java.util.Set;

/**
 * A span of the day with one price of energy.
 *
 * @param season empty: every season
 * @param fromMinute start, minutes after midnight
 * @param toMinute end, up to 1440, later than the start
 */
public record PriceBand(
        String tariff,
        Optional<String> season,
        Set<DayOfWeek> days,
        int fromMinute,
        int toMinute,
        BigDecimal pricePerKwh) {}
