package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * A kind of load-sharing unit: it caps what the chargers behind it draw together and feeds the rest when there is room.
 *
 * @param outlets chargers that fit behind it
 * @param amps most that it draws, at the circuit's voltage
 * @param priorityOutlets how many of the outlets are always fed first
 */
public record SharingUnitType(
        String id,
        int outlets,
        double amps,
        int priorityOutlets,
        BigDecimal price,
        BigDecimal installCost,
        double lifeYears) {}
