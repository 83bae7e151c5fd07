package depot.optimizer.scenario;

import java.math.BigDecimal;

/**
 * What a tariff bills beside energy.
 *
 * @param standingPerDay paid each day of the year
 * @param demandPricePerKwMonth paid each month for its highest average draw
 * @param demandMinutes length of the averages
 */
public record TariffTerms(
        String tariff, BigDecimal standingPerDay, BigDecimal demandPricePerKwMonth, int demandMinutes) {}
