package depot.optimizer.tariff;

import java.math.BigDecimal;

/**
 * The demand charge of a record, where it is one price for a month's highest draw, the same in all months.
 *
 * @param usdPerKwMonth 0: there is none
 * @param minutes length of the averages that are billed
 */
record DemandCharge(BigDecimal usdPerKwMonth, int minutes) {}
