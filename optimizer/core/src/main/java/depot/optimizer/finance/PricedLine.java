package depot.optimizer.finance;

import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;

/**
 * One line of a depot's cost with what a unit of it pays.
 *
 * @param phase number of the budget period in which it is bought, from 1, which is now
 * @param category what kind of cost
 * @param item type, circuit, tariff or depot it is for
 * @param quantity how much of it
 * @param unit of the quantity
 * @param outlay of one unit
 */
public record PricedLine(int phase, Category category, String item, double quantity, String unit, Outlay outlay) {

    /** The first phase: now. */
    public static final int NOW = 1;

    /** The line as it stands in a plan. */
    public CostLine costLine(PresentCost money) {
        double perUnit = outlay.presentCost(money);
        return new CostLine(category, item, quantity, unit, perUnit, quantity * perUnit);
    }
}
