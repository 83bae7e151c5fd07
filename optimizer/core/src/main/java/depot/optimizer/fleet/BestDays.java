package depot.optimizer.fleet;

import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.replay.DepotDays;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.MeasuredPlan;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The best days found so far for what a depot has bought, as the replay measures them. */
final class BestDays {

    /** Share of the gap asked for by which a plan may measure dearer than the model took it to be, before other schedules are tried. */
    private static final double ENOUGH_SHARE = 0.05;

    private static final double ROUNDING = 1e-6;

    private final DepotDays depot;
    private final DepotProblem problem;
    private final int phase;
    private final Optional<DepotPlan> before;
    private final double enough;
    private MeasuredDays best;

    /**
     * Begins with the days of a plan.
     *
     * @param phase number of the plan's phase, from 1
     * @param before plan of the phase before
     */
    BestDays(Scenario scenario, DepotProblem problem, int phase, Optional<DepotPlan> before, DepotPlan plan) {
        this.depot = DepotDays.of(scenario, plan).orElseThrow();
        this.problem = problem;
        this.phase = phase;
        this.before = before;
        enough = lines(plan.costs()) * (1 + ENOUGH_SHARE * problem.settings().relativeGap());
        best = MeasuredDays.of(depot, plan);
    }

    DepotPlan plan() {
        return best.plan();
    }

    List<DayPlan> days() {
        return best.plan().days();
    }

    /** How a day of the plan goes. */
    MeasuredDays.Measured measured(int day) {
        return best.days().get(day);
    }

    /** Whether a load behind a unit is late. */
    boolean late() {
        return best.lateWh() > ROUNDING;
    }

    /** Nothing is late or broken, and the plan costs what the model took it to cost. */
    boolean goodEnough() {
        return !late() && best.broken() == 0 && cost(best) <= enough;
    }

    /** Changes each day by itself, the demand paid for aside, and keeps the better of each. */
    void tryEach(UnaryOperator<DayPlan> change) {
        tryEach(days().stream().map(change).toList());
    }

    /** Of each day keeps the better one; the demand paid for must be the same. */
    void tryEach(List<DayPlan> days) {
        if (!days.equals(days())) {
            best = best.bestOf(measured(days));
        }
    }

    /** Keeps all days if together they are better, and says whether they are. */
    boolean tryTogether(List<DayPlan> days) {
        MeasuredDays tried = measured(days);
        boolean better = better(tried);
        best = better ? tried : best;
        return better;
    }

    private MeasuredDays measured(List<DayPlan> days) {
        return MeasuredDays.of(depot, best.plan().with(days, best.plan().costs()));
    }

    private boolean better(MeasuredDays tried) {
        if (Math.abs(tried.lateWh() - best.lateWh()) > ROUNDING) {
            return tried.lateWh() < best.lateWh();
        }
        return tried.broken() != best.broken() ? tried.broken() < best.broken() : cost(tried) < cost(best) - ROUNDING;
    }

    private double cost(MeasuredDays days) {
        return lines(MeasuredPlan.of(problem, phase, days.plan(), before, days.energy())
                .costs());
    }

    private static double lines(List<CostLine> costs) {
        return costs.stream().mapToDouble(CostLine::presentCost).sum();
    }
}
