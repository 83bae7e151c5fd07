package depot.optimizer.solve;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A plan whose energy is what a replay measured: chargers behind units charge a little earlier or later than the model reckons. */
public final class MeasuredPlan {

    private MeasuredPlan() {}

    /** The same plan of a single phase with other energy on some days, and with the cost and the gap that follow from it. */
    public static DepotPlan of(DepotProblem problem, DepotPlan plan, Map<Integer, List<EnergyUse>> energyByDay) {
        return of(problem, 1, plan, Optional.empty(), energyByDay);
    }

    /**
     * The same plan with other energy on some days, and with the cost and the gap that follow from it.
     *
     * @param phase number of its phase, from 1
     * @param before plan of the phase before
     * @param energyByDay energy drawn, by index of the day in the plan
     */
    public static DepotPlan of(
            DepotProblem problem,
            int phase,
            DepotPlan plan,
            Optional<DepotPlan> before,
            Map<Integer, List<EnergyUse>> energyByDay) {
        List<DayPlan> days = new ArrayList<>();
        for (int d = 0; d < plan.days().size(); d++) {
            DayPlan day = plan.days().get(d);
            days.add(energyByDay.containsKey(d) ? day.withEnergy(energyByDay.get(d)) : day);
        }
        DepotPlan draft = plan.with(days, List.of());
        DepotPlan measured = draft.with(days, CostBook.of(problem, phase, draft, before));
        double cost =
                measured.costs().stream().mapToDouble(CostLine::presentCost).sum();
        double bound = Math.min(cost, plan.stop().certificate().bound());
        return measured.withStop(plan.stop()
                .withCertificate(Certificate.of(cost, bound, problem.settings().relativeGap())));
    }
}
