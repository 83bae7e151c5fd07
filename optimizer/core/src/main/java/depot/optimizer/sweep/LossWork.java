package depot.optimizer.sweep;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.solve.MeasuredPlan;
import depot.optimizer.sweep.change.Ownership;
import java.util.Map;

/** Finds out whether the base plan holds with a loss, and where not, what has to be bought on top. */
interface LossWork {

    /** What is lost where. */
    Loss loss();

    /** The same in words. */
    default String words() {
        return loss().depot() + ", " + loss().words();
    }

    /** The answer. */
    LossResult result(Workshop workshop);

    /**
     * What a plan costs from the day on which it has been carried out.
     *
     * @param there the depot's problem with everything there, and nothing lost
     */
    static double costCarriedOut(DepotProblem there, DepotPlan plan) {
        return MeasuredPlan.of(there, Ownership.carriedOut(plan), Map.of())
                .stop()
                .certificate()
                .cost();
    }
}
