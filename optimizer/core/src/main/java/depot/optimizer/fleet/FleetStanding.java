package depot.optimizer.fleet;

import depot.optimizer.fleet.DepotPricing.Question;
import depot.optimizer.mip.Limits;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.LinearPoint;
import depot.optimizer.solve.SharedPrices;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** How far the search for a fleet's plan has come: the pool of depots' plans, the best choice from it, and the highest bound with its prices. */
final class FleetStanding {

    /** Share of the gap asked for that the depots' own searches may leave. */
    private static final double DEPOT_SHARE = 0.5;

    private static final long MASTER_NODES = 20_000;

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final FleetBound bounds;
    private final FleetMaster master;
    private final PlanPool pool;
    private final ProgressListener progress;
    private double[] allowed = {};
    private SharedPrices bestPrices = SharedPrices.NONE;
    private List<Double> depotBounds = List.of();
    private double bestBound = Double.NEGATIVE_INFINITY;
    private double boundAsOne = Double.NEGATIVE_INFINITY;
    private FleetMaster.Choice best;

    FleetStanding(
            Scenario scenario,
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            QuantityPrices quantities,
            FleetBound bounds,
            ProgressListener progress) {
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.limits = limits;
        this.bounds = bounds;
        this.progress = progress;
        master = new FleetMaster(limits, quantities, rollouts.size(), PriceSearch.PENALTY, Map.of());
        pool = new PlanPool(rollouts.size());
    }

    /** Shares what may stay open among the depots, by what their relaxations cost. */
    void share(PriceSearch.Found found) {
        share(
                found.objective(),
                found.answers().stream().map(LinearPoint::bound).toList());
    }

    /**
     * The same.
     *
     * @param cost of the fleet, about
     * @param parts what each depot costs of it, at prices of what is shared
     */
    void share(double cost, List<Double> parts) {
        double all = parts.stream().mapToDouble(Double::doubleValue).sum();
        double open = DEPOT_SHARE * gap() * Math.abs(cost);
        allowed = parts.stream().mapToDouble(part -> open * part / all).toArray();
    }

    /** How far cost and bound of a depot may be apart. */
    double allowed(int depot) {
        return allowed[depot];
    }

    double gap() {
        return scenario.solve().relativeGap();
    }

    List<Question> questions(List<Integer> depots, SharedPrices prices) {
        return depots.stream()
                .map(d -> new Question(d, prices, allowed[d], Map.of()))
                .toList();
    }

    /** Plans every depot at some prices; their bounds give the fleet's. Says whether the plans together exceed a limit. */
    boolean planAll(DepotPricing pricing, SharedPrices prices) {
        List<Integer> all = IntStream.range(0, rollouts.size()).boxed().toList();
        List<ProvenDepot> answers = pricing.together(questions(all, prices));
        for (int d = 0; d < answers.size(); d++) {
            pool.add(d, answers.get(d));
        }
        bounded(prices, answers.stream().map(answer -> bound(answer, prices)).toList());
        return limits.stream().anyMatch(limit -> use(answers, limit) > limit.most());
    }

    /**
     * No plan of a depot costs less than this at some prices. A schedule may measure cheaper than the model, which leaves room behind units, takes it to
     * be: then that is all that is known of the depot.
     */
    static double bound(ProvenDepot answer, SharedPrices prices) {
        return Math.min(answer.bound(), answer.cost(prices));
    }

    /** Takes note of the depots' bounds at some prices, if the fleet's is the highest so far. */
    void bounded(SharedPrices prices, List<Double> ofDepots) {
        double bound = bounds.of(
                prices, ofDepots.stream().mapToDouble(Double::doubleValue).sum());
        if (bound > bestBound) {
            bestBound = bound;
            bestPrices = prices;
            depotBounds = List.copyOf(ofDepots);
        }
    }

    private static double use(List<ProvenDepot> answers, SharedLimit limit) {
        return answers.stream()
                .mapToDouble(answer -> answer.rollout().use().getOrDefault(limit, 0.0))
                .sum();
    }

    /** Asks, and adds the plans to the pool in the order of the questions; a question may have none. */
    void askPossible(DepotPricing pricing, List<Question> questions) {
        List<Optional<ProvenDepot>> answers = pricing.possible(questions);
        for (int i = 0; i < answers.size(); i++) {
            int depot = questions.get(i).depot();
            answers.get(i).ifPresent(proven -> pool.add(depot, proven));
        }
    }

    /** Asks, and adds the plans to the pool in the order of the questions. */
    List<ProvenDepot> ask(DepotPricing pricing, List<Question> questions) {
        List<ProvenDepot> answers = pricing.plans(questions);
        for (int i = 0; i < answers.size(); i++) {
            pool.add(questions.get(i).depot(), answers.get(i));
        }
        return answers;
    }

    PlanPool pool() {
        return pool;
    }

    FleetMaster.Relaxed relaxed() {
        return master.relax(pool.columns());
    }

    /** Chooses from the pool, and tells how far that is. */
    void choose() {
        takeBest();
        tell();
    }

    void tell() {
        if (best != null) {
            progress.fleetPlan(Certificate.of(best.cost(), bound(), gap()));
        }
    }

    void takeBest() {
        Limits work = new Limits(
                SharedFleet.PRICES_SHARE * gap(),
                MASTER_NODES,
                scenario.solve().timeLimitSeconds(),
                scenario.solve().seed());
        Optional<FleetMaster.Choice> choice = master.choose(pool.columns(), work);
        if (choice.isPresent()
                && (best == null || !replayed(best) || choice.get().cost() < best.cost())) {
            best = choice.get();
        }
    }

    private static boolean replayed(FleetMaster.Choice choice) {
        return choice.columns().stream().allMatch(column -> column.proven().replayed());
    }

    /** The best choice so far; empty while none keeps the limits. */
    Optional<FleetMaster.Choice> best() {
        return Optional.ofNullable(best);
    }

    /** What the best choice costs, infinite without one. */
    double cost() {
        return best == null ? Double.POSITIVE_INFINITY : best.cost();
    }

    double bound() {
        return Math.max(bestBound, boundAsOne);
    }

    /** Takes note of a bound that a model of all depots together has given: no plan costs less. */
    void boundedAsOne(double bound) {
        boundAsOne = Math.max(boundAsOne, bound);
    }

    SharedPrices bestPrices() {
        return bestPrices;
    }

    List<Double> depotBounds() {
        return depotBounds;
    }

    boolean closed() {
        return open() <= gap() && replayed(best);
    }

    /** The gap of the best choice so far, infinite without one. */
    double open() {
        return best == null ? Double.POSITIVE_INFINITY : (best.cost() - bound()) / Math.abs(best.cost());
    }

    /** What the bound is made of; that of one model, where it is higher, has no parts. */
    BoundProof proof() {
        return bounds.proof(
                bestPrices,
                rollouts.stream().map(rollout -> rollout.depot().id()).toList(),
                depotBounds,
                boundAsOne > bestBound);
    }

    /** Keeps the cheapest plans of each depot at some prices, and those of the best choice. */
    void trim(SharedPrices prices) {
        pool.trim(prices, best == null ? List.of() : best.columns());
    }
}
