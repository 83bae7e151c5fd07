package depot.optimizer.fleet;

import depot.optimizer.fleet.DepotPricing.Question;
import depot.optimizer.mip.Limits;
import depot.optimizer.plan.BoundProof;
import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Plans depots that share limits, by prices on these (Dantzig and Wolfe 1960; smoothed after Wentges 1997; both from memory).
 *
 * <ol>
 *   <li>Prices come from the linear relaxations of the depots ({@link PriceSearch}).
 *   <li>At these prices every depot is planned in whole numbers. The bounds of these searches give the fleet's bound; their plans, replayed, are the pool.
 *   <li>Some depots after others are planned at lower and higher prices as well, until a master in whole numbers finds a choice of plans that keeps the
 *       limits and is within the gap.
 *   <li>How many packs visiting crews get is settled for home and host alike ({@link VisitCounts}).
 *   <li>What the choice leaves of the limits is offered to single depots ({@link LeftOver}).
 *   <li>While the gap is open, the master's relaxation gives new prices.
 * </ol>
 */
final class SharedFleet {

    /** Share of the gap asked for that the depots' own searches may leave. */
    private static final double DEPOT_SHARE = 0.5;

    /** Share of the gap asked for that the prices' search may leave. */
    private static final double PRICES_SHARE = 0.1;

    private static final int MOST_ROUNDS = 12;

    /** Multiples of the prices at which depots are planned so that the master can mix. */
    private static final double[] AROUND = {0.8, 1.25};

    /** Depots that are planned at such prices before the master is asked again: this many, or this share of all. */
    private static final int FEWEST_VARIED = 16;

    private static final double SHARE_VARIED = 0.125;

    /** Times that what is left of the limits is offered after one choice. */
    private static final int MOST_OFFERS = 3;

    /** Most numbers of packs on visits tried. */
    private static final int MOST_VISITS_TRIED = 40;

    private static final long MASTER_NODES = 20_000;

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final RunControl control;
    private final List<SharedLimit> limits;
    private final ProgressListener progress;
    private final QuantityPrices quantities;
    private final FleetMaster master;
    private final FleetBound bounds;
    private final PlanPool pool;
    private final VisitCounts visits;
    private final Set<Map<SharedLimit, Integer>> triedVisits = new HashSet<>();
    private int visitsTried;
    private double[] allowed = {};
    private SharedPrices bestPrices = SharedPrices.NONE;
    private List<Double> depotBounds = List.of();
    private double bestBound = Double.NEGATIVE_INFINITY;
    private FleetMaster.Choice best;

    SharedFleet(Scenario scenario, List<DepotRollout> rollouts, ProgressListener progress, RunControl control) {
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.progress = progress;
        this.control = control;
        limits = SharedLimits.of(scenario);
        quantities = new QuantityPrices(scenario);
        master = new FleetMaster(limits, quantities, rollouts.size(), PriceSearch.PENALTY, Map.of());
        bounds = new FleetBound(limits, quantities);
        pool = new PlanPool(rollouts.size());
        visits = new VisitCounts(rollouts, limits);
    }

    /**
     * The fleet's plan with its bound.
     *
     * @throws NothingFitsException when no plan that keeps the shared limits is found
     */
    FleetPlan solve() {
        try (DepotPricing pricing = new DepotPricing(scenario, rollouts, control)) {
            search(pricing);
            if (best == null) {
                throw new LeastUse(scenario, limits, pricing, bounds).explained();
            }
        } catch (StoppedException e) {
            if (best == null) {
                throw e;
            }
            progress.stopped();
        }
        BoundProof proof = bounds.proof(
                bestPrices,
                rollouts.stream().map(rollout -> rollout.depot().id()).toList(),
                depotBounds);
        return FinishedFleet.of(scenario, rollouts, best, bestBound, proof);
    }

    private void search(DepotPricing pricing) {
        PriceSearch.Found found =
                new PriceSearch(rollouts, limits, quantities, bounds, pricing, PRICES_SHARE * gap()).search();
        progress.pricesFound(found.bound(), found.objective());
        share(found);
        SharedPrices prices = found.prices();
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            double open = open();
            double bound = bestBound;
            planAll(pricing, prices);
            choose();
            if (round == 1) {
                vary(pricing, prices);
            }
            settleCrews(pricing, found.prices());
            visits(pricing, found);
            offerWhatIsLeft(pricing);
            boolean stuck = round > 1 && open() >= open && bestBound <= bound;
            if (closed() || stuck) {
                return;
            }
            pool.trim(prices, best == null ? List.of() : best.columns());
            FleetMaster.Relaxed relaxed = master.relax(pool.columns());
            prices = best == null && round > 1
                    ? times(relaxed.prices(), 1 + round)
                    : PriceSearch.mixed(limits, bestPrices, relaxed.prices());
            prices = bounds.valid(prices);
        }
    }

    /** Shares what may stay open among the depots, by what their relaxations cost. */
    private void share(PriceSearch.Found found) {
        double all =
                found.answers().stream().mapToDouble(point -> point.bound()).sum();
        double open = DEPOT_SHARE * gap() * Math.abs(found.objective());
        allowed = found.answers().stream()
                .mapToDouble(point -> open * point.bound() / all)
                .toArray();
    }

    private double gap() {
        return scenario.solve().relativeGap();
    }

    private List<Question> questions(List<Integer> depots, SharedPrices prices) {
        return depots.stream()
                .map(d -> new Question(d, prices, allowed[d], Map.of()))
                .toList();
    }

    private void planAll(DepotPricing pricing, SharedPrices prices) {
        List<Integer> all = IntStream.range(0, rollouts.size()).boxed().toList();
        List<ProvenDepot> answers = ask(pricing, questions(all, prices));
        // A schedule may measure cheaper than the model, which leaves room behind units, takes it to be: then that is
        // all that is known of the depot.
        List<Double> ofDepots = answers.stream()
                .map(answer -> Math.min(
                        answer.bound(),
                        answer.rollout().cost() + prices.of(answer.rollout().use())))
                .toList();
        double bound = bounds.of(
                prices, ofDepots.stream().mapToDouble(Double::doubleValue).sum());
        if (bound > bestBound) {
            bestBound = bound;
            bestPrices = prices;
            depotBounds = ofDepots;
        }
    }

    /** Asks, and adds the plans to the pool in the order of the questions. */
    private List<ProvenDepot> ask(DepotPricing pricing, List<Question> questions) {
        List<ProvenDepot> answers = pricing.plans(questions);
        for (int i = 0; i < answers.size(); i++) {
            pool.add(questions.get(i).depot(), answers.get(i));
        }
        return answers;
    }

    /** Plans depots at lower and higher prices, some at a time from all over the fleet, until a choice is within the gap. */
    private void vary(DepotPricing pricing, SharedPrices prices) {
        int size = Math.max(FEWEST_VARIED, (int) Math.ceil(SHARE_VARIED * rollouts.size()));
        int groups = (rollouts.size() + size - 1) / size;
        for (int group = 0; group < groups && !closed(); group++) {
            int first = group;
            List<Integer> some = IntStream.range(0, rollouts.size())
                    .filter(d -> d % groups == first)
                    .boxed()
                    .toList();
            for (double multiple : AROUND) {
                ask(pricing, questions(some, bounds.valid(times(prices, multiple))));
            }
            choose();
        }
    }

    private SharedPrices times(SharedPrices prices, double factor) {
        Map<SharedLimit, Double> scaled = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            boolean kept = limit.kind() == Kind.CREW || limit.kind() == Kind.MOVES;
            scaled.put(limit, prices.of(limit) * (kept ? 1 : factor));
        }
        return new SharedPrices(scaled);
    }

    /** Sends each crew that has several bases to the one where the pool's relaxation wants it most, and plans the depots with that. */
    private void settleCrews(DepotPricing pricing, SharedPrices prices) {
        List<SharedLimit> crews =
                limits.stream().filter(limit -> limit.kind() == Kind.CREW).toList();
        if (crews.isEmpty() || closed()) {
            return;
        }
        List<FleetColumn> columns = pool.columns();
        double[] weights = master.relax(columns).weights();
        List<Map<SharedLimit, UseRange>> settled = new CrewPlaces(rollouts, crews, columns).settled(weights);
        ask(
                pricing,
                IntStream.range(0, rollouts.size())
                        .mapToObj(d -> new Question(d, prices, allowed[d], settled.get(d)))
                        .toList());
        choose();
    }

    /** Settles what visiting crews get: what the relaxations wanted, nothing, and then steps from the best choice to better ones. */
    private void visits(DepotPricing pricing, PriceSearch.Found found) {
        if (visits.none() || closed()) {
            return;
        }
        if (visitsTried == 0) {
            visits.around(found.wanted())
                    .forEach(packs -> settleVisits(pricing, visits.free(found.prices()), packs, Map.of()));
            choose();
        }
        boolean better = true;
        while (better && best != null) {
            double before = best.cost();
            Map<SharedLimit, Integer> now = visits.countedOn(best.columns());
            Iterator<Map<SharedLimit, Integer>> tries = visits.beside(now).iterator();
            while (tries.hasNext() && best.cost() >= before && visitsTried < MOST_VISITS_TRIED && !closed()) {
                Map<SharedLimit, Integer> packs = tries.next();
                if (triedVisits.add(packs)) {
                    visitsTried++;
                    settleVisits(pricing, visits.free(found.prices()), packs, packs.equals(now) ? Map.of() : now);
                    takeBest();
                }
            }
            better = best.cost() < before;
            if (better) {
                tell();
            }
        }
    }

    /** Plans home and host of each visit with the same number of packs; where a crew counts on fewer after all, the host is planned for these. */
    private void settleVisits(
            DepotPricing pricing,
            SharedPrices prices,
            Map<SharedLimit, Integer> packs,
            Map<SharedLimit, Integer> before) {
        List<Map<SharedLimit, UseRange>> ranges = visits.ranges(packs, before);
        List<Question> questions = new ArrayList<>();
        for (int d = 0; d < ranges.size(); d++) {
            if (!ranges.get(d).isEmpty()) {
                questions.add(new Question(d, prices, allowed[d] / DEPOT_SHARE, ranges.get(d)));
            }
        }
        List<Optional<ProvenDepot>> answers = pricing.possible(questions);
        List<FleetColumn> columns = new ArrayList<>();
        for (int i = 0; i < answers.size(); i++) {
            int depot = questions.get(i).depot();
            answers.get(i).ifPresent(proven -> {
                pool.add(depot, proven);
                RolloutPlan plan = proven.rollout();
                columns.add(new FleetColumn(depot, plan.cost(), plan.use(), proven));
            });
        }
        Map<SharedLimit, Integer> fewer = new LinkedHashMap<>(packs);
        fewer.putAll(visits.countedOn(columns));
        if (!fewer.equals(packs) && triedVisits.add(fewer)) {
            settleVisits(pricing, prices, fewer, packs);
        }
    }

    private void offerWhatIsLeft(DepotPricing pricing) {
        LeftOver leftOver = new LeftOver(rollouts, limits, bounds);
        for (int offer = 0; offer < MOST_OFFERS && best != null && !closed(); offer++) {
            double cost = best.cost();
            ask(pricing, leftOver.questions(best, bestPrices, depotBounds, d -> allowed[d]));
            choose();
            if (best.cost() >= cost) {
                return;
            }
        }
    }

    private void choose() {
        takeBest();
        tell();
    }

    private void tell() {
        if (best != null) {
            progress.fleetPlan(Certificate.of(best.cost(), bestBound, gap()));
        }
    }

    private void takeBest() {
        Limits work = new Limits(
                PRICES_SHARE * gap(),
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

    private boolean closed() {
        return open() <= gap() && replayed(best);
    }

    /** The gap of the best plan so far, infinite without one. */
    private double open() {
        return best == null ? Double.POSITIVE_INFINITY : (best.cost() - bestBound) / Math.abs(best.cost());
    }
}
