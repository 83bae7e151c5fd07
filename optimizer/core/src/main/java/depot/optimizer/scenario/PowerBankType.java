package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * A kind of portable store that feeds portable chargers far from the mains.
 *
 * @param energyWh what it holds
 * @param outputWatts most that it gives
 * @param efficiency energy given per energy held, 0 to 1
 * @param rechargeWatts what it draws at the depot
 * @param rechargeMinutes from empty to full
 */
public record PowerBankType(
        String id,
        double energyWh,
        double outputWatts,
        double efficiency,
        double rechargeWatts,
        int rechargeMinutes,
        double weightKg,
        BigDecimal price,
        double lifeYears) {}
