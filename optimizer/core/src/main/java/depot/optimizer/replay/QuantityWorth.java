package depot.optimizer.replay;

import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * What money paid for a piece of an item comes to over the horizon.
 *
 * @param price the item's own
 * @param lifeYears 0: a pack, whose stock is kept whole
 */
record QuantityWorth(BigDecimal price, double lifeYears) {

    /** Of an item by its id; no such item has no price. */
    static QuantityWorth of(Scenario scenario, String item) {
        List<QuantityWorth> found = new ArrayList<>();
        scenario.packTypes().stream()
                .filter(type -> type.id().equals(item))
                .forEach(type -> found.add(new QuantityWorth(type.price(), 0)));
        scenario.chargerTypes().stream()
                .filter(type -> type.id().equals(item))
                .forEach(type -> found.add(new QuantityWorth(type.price(), type.lifeYears())));
        scenario.sharingUnitTypes().stream()
                .filter(type -> type.id().equals(item))
                .forEach(type -> found.add(new QuantityWorth(type.price(), type.lifeYears())));
        scenario.powerBankTypes().stream()
                .filter(type -> type.id().equals(item))
                .forEach(type -> found.add(new QuantityWorth(type.price(), type.lifeYears())));
        return found.isEmpty() ? new QuantityWorth(BigDecimal.ZERO, 0) : found.get(0);
    }

    boolean known() {
        return price.signum() > 0;
    }

    /** Present cost of one paid at the purchase: what the piece is worth at the end counts against it, unless another has followed by then. */
    BigDecimal presentPerMoney(DecimalMoney money) {
        if (lifeYears == 0) {
            return money.startFactor().subtract(money.endFactor());
        }
        boolean followed = money.fromYear() + lifeYears < money.horizonYears();
        return followed ? money.startFactor() : money.lifeCost(BigDecimal.ONE, BigDecimal.ZERO, lifeYears);
    }
}
