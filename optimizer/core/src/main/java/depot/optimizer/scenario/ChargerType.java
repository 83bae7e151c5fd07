package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * A kind of charger.
 *
 * @param bays packs it holds
 * @param chargingAtOnce packs it charges together; fewer than its bays: the others wait their turn
 * @param plateWatts rated input power, all bays that charge at once
 * @param efficiency energy into packs per energy from the mains, 0 to 1
 * @param places wall or bench places it takes
 * @param portable whether a crew may carry it
 * @param weightKg weight when carried
 */
public record ChargerType(
        String id,
        int bays,
        int chargingAtOnce,
        double plateWatts,
        double efficiency,
        int places,
        boolean portable,
        double weightKg,
        BigDecimal price,
        BigDecimal installCost,
        double lifeYears) {}
