package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.Effort;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import java.util.List;
import java.util.function.Supplier;

/** A depot that is planned and replayed with more and more effort. What it comes to depends on its question and the effort alone. */
final class OpenDepot {

    /**
     * Kinds of day in all phases up to which a depot's gap is closed. Beyond it a plan has its first bound: to search a master of that many days for
     * anything cheaper takes minutes for each depot, and finds little.
     */
    private static final int MOST_DAYS = 30;

    private static final double ROUNDING = 1e-9;

    private final Scenario scenario;
    private final DepotRollout rollout;
    private final AnswerStore answers;
    private final String question;
    private final SharedPrices prices;
    private final double allowed;
    private final Supplier<DepotSolver> begun;
    private final List<Effort> all;
    private int efforts;
    private ProvenDepot best;
    private DepotSolver solver;
    private int solverEfforts;
    private RolloutPlan replayed;

    /**
     * @param question under which the answers are kept
     * @param prices of shared limits, which the plans pay beside their own cost
     * @param allowed how far cost and bound may be apart; 0: as the gap asked for allows
     * @param begun makes a solver with these prices
     */
    OpenDepot(
            Scenario scenario,
            DepotRollout rollout,
            AnswerStore answers,
            String question,
            SharedPrices prices,
            double allowed,
            Supplier<DepotSolver> begun) {
        this.scenario = scenario;
        this.rollout = rollout;
        this.answers = answers;
        this.question = question;
        this.prices = prices;
        this.allowed = allowed;
        this.begun = begun;
        all = rollout.days().size() > MOST_DAYS ? List.of(Effort.FIRST) : List.of(Effort.values());
    }

    /** One that shares nothing with others. */
    static OpenDepot alone(Scenario scenario, DepotRollout rollout, AnswerStore answers) {
        return new OpenDepot(
                scenario,
                rollout,
                answers,
                rollout.depot().id(),
                SharedPrices.NONE,
                0,
                () -> new DepotSolver(rollout, SharedPrices.NONE, 0));
    }

    /** The depot. */
    String depot() {
        return rollout.depot().id();
    }

    /** The best plan so far; null before the first effort. */
    ProvenDepot best() {
        return best;
    }

    /** What the best plan costs, at the prices of shared limits. */
    private double cost() {
        return best.rollout().cost() + prices.of(best.rollout().use());
    }

    /** Cost and bound of the best plan are this far apart. */
    double open() {
        return Math.max(0, cost() - best.bound());
    }

    /** The gap is reached, or there is no effort left to make. */
    boolean done() {
        double most = allowed > 0 ? allowed : scenario.solve().relativeGap() * Math.abs(cost());
        return efforts == all.size() || open() <= most * (1 + ROUNDING);
    }

    /**
     * Makes the next effort.
     *
     * @throws depot.optimizer.solve.NoPlanException if no plan is found within the limits
     */
    void further() {
        String asked = question + "; " + all.get(efforts);
        ProvenDepot next = ProvenDepot.kept(answers, asked, scenario, rollout, this::worked);
        best = best == null ? next : better(next, best).boundedBy(Math.max(next.bound(), best.bound()));
        efforts++;
        if (done()) {
            solver = null;
        }
    }

    /** The plan once the gap is reached, or no effort is left. */
    ProvenDepot closed() {
        do {
            further();
        } while (!done());
        return best;
    }

    /** The solver goes through all efforts, those too whose answers were kept, so that it ends where it would have ended. */
    private ProvenDepot worked() {
        if (solver == null) {
            solver = begun.get();
        }
        RolloutPlan found = null;
        for (; solverEfforts <= efforts; solverEfforts++) {
            found = solver.solveRollout(all.get(solverEfforts));
        }
        if (best != null && replayed != null && found.cost() == replayed.cost()) {
            return best.boundedBy(solver.bound());
        }
        replayed = found;
        return ProvenDepot.replayed(scenario, rollout, solver, found);
    }

    private ProvenDepot better(ProvenDepot one, ProvenDepot other) {
        if (one.replayed() != other.replayed()) {
            return one.replayed() ? one : other;
        }
        double less = other.rollout().cost() + prices.of(other.rollout().use());
        return one.rollout().cost() + prices.of(one.rollout().use()) < less ? one : other;
    }
}
