package depot.optimizer.replay;

import depot.optimizer.plan.CostLine.Category;
import java.math.BigDecimal;
import java.util.List;

/**
 * A depot's cost, worked out again in decimal arithmetic.
 *
 * @param lines by category
 * @param total sum of the expected costs
 * @param planned the plan's own total, of its certificate
 * @param energyPerYear cost of the energy that the replay drew, in a year
 * @param plannedEnergyPerYear cost of the energy that the plan reckons with
 * @param differences in plain words; empty: everything agrees
 */
public record CostCheck(
        List<CategoryCost> lines,
        BigDecimal total,
        BigDecimal planned,
        BigDecimal energyPerYear,
        BigDecimal plannedEnergyPerYear,
        List<String> differences) {

    /** Present cost of one category: as worked out again, and as the plan has it. */
    public record CategoryCost(Category category, BigDecimal expected, BigDecimal planned) {}

    /** Whether the plan's cost is right to half a cent per line. */
    public boolean agrees() {
        return differences.isEmpty();
    }
}
