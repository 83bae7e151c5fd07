package depot.optimizer.fleet;

import depot.optimizer.problem.DepotRollout;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.Effort;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A depot that is planned and replayed with more and more effort. What it comes to depends on its question and the effort alone. */
public final class OpenDepot {

    /** Times the gap asked for that a depot may stay open where only the sum counts. */
    private static final double MOST_OPEN = 2;

    private static final double ROUNDING = 1e-9;

    private final Scenario scenario;
    private final DepotRollout rollout;
    private final AnswerStore answers;
    private final String question;
    private final SharedPrices prices;
    private final double allowed;
    private final Supplier<DepotSolver> begun;
    private List<Effort> all;
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
        all = Stream.of(Effort.values())
                .filter(effort -> effort.compareTo(Effort.most(rollout)) <= 0)
                .toList();
    }

    /**
     * One that shares nothing with others.
     *
     * @param answers that were kept for the same depot
     */
    public static OpenDepot alone(Scenario scenario, DepotRollout rollout, AnswerStore answers) {
        return new OpenDepot(
                scenario,
                rollout,
                answers,
                rollout.depot().id(),
                SharedPrices.NONE,
                0,
                () -> new DepotSolver(rollout, SharedPrices.NONE, 0));
    }

    /**
     * One that shares nothing with others and has a plan before any effort is made.
     *
     * @param known a plan of a single phase, at this problem's prices, with its replay
     * @param bound no plan costs less
     */
    public static OpenDepot known(
            Scenario scenario, DepotRollout rollout, AnswerStore answers, DepotResult known, double bound) {
        OpenDepot depot = alone(scenario, rollout, answers);
        depot.best = new ProvenDepot(RolloutPlan.of(rollout, List.of(known.plan())), List.of(known.replay()), bound);
        return depot;
    }

    /** The depot. */
    public String depot() {
        return rollout.depot().id();
    }

    /** The best plan so far; null before the first effort. */
    ProvenDepot best() {
        return best;
    }

    /** Whether any effort was made. */
    public boolean searched() {
        return efforts > 0;
    }

    /** Efforts made. */
    int efforts() {
        return efforts;
    }

    /** The best plan of a single phase so far, with its bound, and its replay. */
    public DepotResult result() {
        ProvenDepot proven = certified();
        return new DepotResult(proven.plan(), proven.replay());
    }

    /** The best plan so far of one that shares nothing, with its bound. */
    ProvenDepot certified() {
        ProvenDepot proven = best.certified(scenario);
        return done() ? proven : proven.leftOpen();
    }

    /** What the best plan costs, at the prices of shared limits. */
    public double cost() {
        return best.cost(prices);
    }

    /** Cost and bound of the best plan are this far apart. */
    public double open() {
        return Math.max(0, cost() - best.bound());
    }

    /** The gap is reached, or there is no effort left to make. */
    public boolean done() {
        return efforts == all.size() || open() <= allowed() * (1 + ROUNDING);
    }

    /** Its search left it too far open for a plan that anybody would want to carry out, however well the others do; more effort can be made. */
    boolean poor() {
        return searched() && efforts < all.size() && open() > MOST_OPEN * allowed() * (1 + ROUNDING);
    }

    private double allowed() {
        return allowed > 0 ? allowed : scenario.solve().relativeGap() * Math.abs(cost());
    }

    /**
     * Makes the next effort.
     *
     * @throws depot.optimizer.solve.NoPlanException if no plan is found within the limits
     */
    public void further() {
        String asked = question + "; " + all.get(efforts);
        ProvenDepot next = ProvenDepot.kept(answers, asked, scenario, rollout, this::worked);
        best = best == null ? next : next.better(best, prices).boundedBy(Math.max(next.bound(), best.bound()));
        efforts++;
        if (done()) {
            solver = null;
        }
    }

    /** Leaves out what lies between the first effort and the last: that pays where others may close the gap in its stead. */
    public void byItself() {
        if (efforts <= 1 && all.size() > 1) {
            all = List.of(Effort.FIRST, Effort.ALL);
        }
    }

    /** The plan once the gap is reached, or no effort is left. */
    ProvenDepot closed() {
        byItself();
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
        return ProvenDepot.replayed(scenario, rollout, prices, solver, found);
    }
}
