package depot.optimizer.tariff;

import depot.optimizer.read.JsonValue;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * A tier of a period: the price of what is used up to its limit.
 *
 * @param place in the record, such as {@code energyratestructure[0][1]}
 * @param rate US dollars a unit
 * @param adj adjustment that is added to the rate, US dollars a unit
 * @param sell what is paid for energy fed back, US dollars a unit
 * @param unit of the tier's limit
 */
record Tier(
        JsonValue value,
        String place,
        Optional<BigDecimal> rate,
        Optional<BigDecimal> adj,
        Optional<BigDecimal> sell,
        Optional<String> unit) {

    /** Rate and adjustment together; empty: the tier names neither. */
    Optional<BigDecimal> price() {
        if (rate.isEmpty() && adj.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(rate.orElse(BigDecimal.ZERO).add(adj.orElse(BigDecimal.ZERO)));
    }
}
