package depot.optimizer.solve;

import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Slice;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A plan that was made for another problem of the same depot, at this problem's prices. Whether it keeps the rules is for a replay to say. */
public final class RepricedPlan {
    private RepricedPlan() {}

    /** The same purchases and days with costs as in a problem, and a certificate without a bound. */
    public static DepotPlan of(DepotProblem problem, DepotPlan plan) {
        return of(problem, 1, plan, Optional.empty());
    }

    /**
     * The same for the plan of one of several phases.
     *
     * @param phase number of its phase, from 1
     * @param before plan of the phase before
     */
    public static DepotPlan of(DepotProblem problem, int phase, DepotPlan plan, Optional<DepotPlan> before) {
        Map<Integer, List<EnergyUse>> energy = new TreeMap<>();
        for (int d = 0; d < plan.days().size(); d++) {
            DayPlan day = plan.days().get(d);
            energy.put(
                    d,
                    day.energy().stream()
                            .map(use -> new EnergyUse(
                                    use.fromMinute(), use.toMinute(), use.kwh(), price(problem, day, use)))
                            .toList());
        }
        return MeasuredPlan.of(problem, phase, plan, before, energy);
    }

    private static BigDecimal price(DepotProblem problem, DayPlan day, EnergyUse use) {
        return problem.days().stream()
                .filter(kind -> alike(kind, day))
                .flatMap(kind -> kind.slices().stream())
                .filter(slice -> slice.fromMinute() <= use.fromMinute() && use.fromMinute() < slice.toMinute())
                .map(Slice::pricePerKwh)
                .findFirst()
                .orElse(use.pricePerKwh());
    }

    private static boolean alike(DayKind kind, DayPlan day) {
        return kind.occurrences().contains(day.occurrences().get(0));
    }
}
