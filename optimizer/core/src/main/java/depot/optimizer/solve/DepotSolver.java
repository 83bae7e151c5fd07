package depot.optimizer.solve;

import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.SharedLimit;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * Solves one depot over all phases. Where shortage is forbidden, every need is met if any purchases can do it; only if none can is the least shortage
 * planned for, and it is for the caller to say so.
 */
public final class DepotSolver {

    private final int tightened;
    private DepotSearch search;

    /** For a problem of a single phase. */
    public DepotSolver(DepotProblem problem) {
        this(DepotRollout.of(problem), SharedPrices.NONE, 0);
    }

    /**
     * For a depot that shares limits with others.
     *
     * @param prices of the limits, which the depot's plans pay beside their own cost
     * @param tolerance how far cost and bound may be apart; 0: as the gap asked for allows
     */
    public DepotSolver(DepotRollout rollout, SharedPrices prices, double tolerance) {
        tightened = 0;
        ShortagePolicy policy = rollout.first().shortageForbidden() ? ShortagePolicy.REFUSE : ShortagePolicy.ALLOW;
        List<DayTerms> terms = terms(Collections.nCopies(rollout.days().size(), Tightening.NONE), policy);
        search = new DepotSearch(new SearchTask(rollout, prices, tolerance, Map.of(), terms, policy, tightened));
    }

    private DepotSolver(int tightened, DepotSearch search) {
        this.tightened = tightened;
        this.search = search;
    }

    /**
     * For the same problem after its replay has failed. What this solver has learnt is kept: cuts stay valid, since a tighter day costs no less.
     *
     * @param tighter one for each day of each phase
     */
    public DepotSolver tightened(List<Tightening> tighter) {
        return new DepotSolver(tightened + 1, search.tightened(terms(tighter, search.policy()), tightened + 1));
    }

    /** For the same problem at other prices of shared limits; what this solver has learnt of the days is kept. */
    public DepotSolver repriced(SharedPrices prices, double tolerance) {
        return new DepotSolver(tightened, search.repriced(prices, tolerance, Map.of()));
    }

    /** The same, when it is settled how much of some shared limits plans may use. */
    public DepotSolver within(SharedPrices prices, double tolerance, Map<SharedLimit, UseRange> ranges) {
        return new DepotSolver(tightened, search.repriced(prices, tolerance, ranges));
    }

    /**
     * The plan of a single phase with its bound.
     *
     * @throws NoPlanException when no plan is found within the limits
     */
    public DepotPlan solve() {
        return solveRollout(Effort.ALL).phases().get(0);
    }

    /**
     * The plans of all phases; the certificate of each is that of the whole, prices of shared limits included. Asked again for more effort, the search goes on.
     *
     * @throws NoPlanException when no plan is found within the limits
     */
    public RolloutPlan solveRollout(Effort effort) {
        try {
            return search.run(effort);
        } catch (NeedsCannotBeMetException e) {
            search = search.allowingShortage();
            return search.run(effort);
        }
    }

    /**
     * The linear relaxation of the whole depot.
     *
     * @throws NoPlanException when the simplex finds none
     */
    public LinearPoint linear() {
        try {
            return search.linear();
        } catch (NeedsCannotBeMetException e) {
            search = search.allowingShortage();
            return search.linear();
        }
    }

    /** No plan costs less, at the prices of shared limits; minus infinity before {@link #solveRollout}. */
    public double bound() {
        return search.bound();
    }

    private static List<DayTerms> terms(List<Tightening> tightenings, ShortagePolicy policy) {
        return tightenings.stream().map(t -> new DayTerms(t, policy)).toList();
    }
}
