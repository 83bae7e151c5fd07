package depot.optimizer.plan;

import java.math.BigDecimal;

/** Energy drawn from the grid for charging in a slice of one price, all circuits together, on one day. */
public record EnergyUse(int fromMinute, int toMinute, double kwh, BigDecimal pricePerKwh) {

    /** Both together, in the same slice. */
    public EnergyUse plus(EnergyUse other) {
        return new EnergyUse(fromMinute, toMinute, kwh + other.kwh, pricePerKwh);
    }
}
