package depot.optimizer.solve;

import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import java.util.Collections;
import java.util.List;

/**
 * Solves one depot. Where shortage is forbidden, every need is met if any purchases can do it; only if none can is the least shortage planned for, and
 * it is for the caller to say so.
 */
public final class DepotSolver {

    private final DepotProblem problem;
    private final int tightened;
    private DepotSearch search;

    /** For a problem as it is. */
    public DepotSolver(DepotProblem problem) {
        this.problem = problem;
        tightened = 0;
        ShortagePolicy policy = problem.shortageForbidden() ? ShortagePolicy.REFUSE : ShortagePolicy.ALLOW;
        search = new DepotSearch(
                problem, terms(Collections.nCopies(problem.days().size(), Tightening.NONE), policy), policy, tightened);
    }

    private DepotSolver(DepotProblem problem, int tightened, DepotSearch search) {
        this.problem = problem;
        this.tightened = tightened;
        this.search = search;
    }

    /**
     * For the same problem after its replay has failed. What this solver has learnt is kept: cuts stay valid, since a tighter day costs no less.
     *
     * @param tighter one for each kind of day
     */
    public DepotSolver tightened(List<Tightening> tighter) {
        DepotSearch next = search.tightened(terms(tighter, search.policy()), tightened + 1);
        return new DepotSolver(problem, tightened + 1, next);
    }

    /**
     * The depot's plan with its bound.
     *
     * @throws NoPlanException when no plan is found within the limits
     */
    public DepotPlan solve() {
        try {
            return search.run();
        } catch (NeedsCannotBeMetException e) {
            search = search.allowingShortage();
            return search.run();
        }
    }

    private static List<DayTerms> terms(List<Tightening> tightenings, ShortagePolicy policy) {
        return tightenings.stream().map(t -> new DayTerms(t, policy)).toList();
    }
}
