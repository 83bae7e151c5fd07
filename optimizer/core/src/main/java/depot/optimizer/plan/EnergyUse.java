package depot.optimizer.plan;

import java.math.BigDecimal;

/** Energy drawn from the grid for charging in a slice of one price, all circuits together, on one day. */
public record EnergyUse(int fromMinute, int toMinute, double kwh, BigDecimal pricePerKwh) {}
