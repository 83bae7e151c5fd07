package depot.optimizer.scenario;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A budget period of a rollout.
 *
 * @param year years from now to its start, below the scenario's horizon; 0: now
 * @param budget capital that the whole fleet may spend in it, empty: no limit
 */
public record Phase(String id, int year, Optional<BigDecimal> budget) {
    /** The only phase of a scenario that names none: everything is bought now, without a limit. */
    public static final Phase NOW = new Phase("now", 0, Optional.empty());
}
