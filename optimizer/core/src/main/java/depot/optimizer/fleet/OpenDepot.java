package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.Effort;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import java.util.List;

/** A depot that shares nothing with others, planned and replayed with more and more effort. What it comes to depends on the depot and the effort alone. */
final class OpenDepot {

    private static final List<Effort> EFFORTS = List.of(Effort.values());

    private static final double ROUNDING = 1e-9;

    private final Scenario scenario;
    private final DepotRollout rollout;
    private final AnswerStore answers;
    private int efforts;
    private ProvenDepot best;
    private DepotSolver solver;
    private int solverEfforts;
    private RolloutPlan replayed;

    OpenDepot(Scenario scenario, DepotRollout rollout, AnswerStore answers) {
        this.scenario = scenario;
        this.rollout = rollout;
        this.answers = answers;
    }

    /** The depot. */
    String depot() {
        return rollout.depot().id();
    }

    /** The best plan so far; null before the first effort. */
    ProvenDepot best() {
        return best;
    }

    /** Cost and bound of the best plan are this far apart. */
    double open() {
        return Math.max(0, best.rollout().cost() - best.bound());
    }

    /** The gap is reached, or there is no effort left to make. */
    boolean done() {
        double allowed =
                scenario.solve().relativeGap() * Math.abs(best.rollout().cost());
        return efforts == EFFORTS.size() || open() <= allowed * (1 + ROUNDING);
    }

    /**
     * Makes the next effort.
     *
     * @throws depot.optimizer.solve.NoPlanException if no plan is found within the limits
     */
    void further() {
        String question = depot() + " " + EFFORTS.get(efforts);
        ProvenDepot next = ProvenDepot.kept(answers, question, scenario, rollout, this::worked);
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
        return certified();
    }

    /** The best plan with certificates: the phases' shares of the depot's cost and bound. */
    ProvenDepot certified() {
        double cost = best.rollout().cost();
        return best.certified(
                cost, Math.min(cost, best.bound()), scenario.solve().relativeGap());
    }

    /** The solver goes through all efforts, those too whose answers were kept, so that it ends where it would have ended. */
    private ProvenDepot worked() {
        if (solver == null) {
            solver = new DepotSolver(rollout, SharedPrices.NONE, 0);
        }
        RolloutPlan found = null;
        for (; solverEfforts <= efforts; solverEfforts++) {
            found = solver.solveRollout(EFFORTS.get(solverEfforts));
        }
        if (best != null && replayed != null && found.cost() == replayed.cost()) {
            return best.boundedBy(solver.bound());
        }
        replayed = found;
        return ProvenDepot.replayed(scenario, rollout, solver, found);
    }

    private static ProvenDepot better(ProvenDepot one, ProvenDepot other) {
        if (one.replayed() != other.replayed()) {
            return one.replayed() ? one : other;
        }
        return one.rollout().cost() < other.rollout().cost() ? one : other;
    }
}
