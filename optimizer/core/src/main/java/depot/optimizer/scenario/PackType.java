package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * A kind of battery pack.
 *
 * @param family packs of one family fit the same tools
 * @param capacityWh rated energy when new
 * @param usableShare share of the rated energy that the tool can draw, 0 to 1
 * @param cycleLife full charges until it is replaced
 * @param calendarYears years until it is replaced whatever its use
 */
public record PackType(
        String id,
        String family,
        double capacityWh,
        double usableShare,
        double weightKg,
        BigDecimal price,
        double cycleLife,
        double calendarYears) {}
