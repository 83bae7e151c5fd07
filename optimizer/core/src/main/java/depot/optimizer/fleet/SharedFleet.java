package depot.optimizer.fleet;

import depot.optimizer.fleet.DepotPricing.Question;
import depot.optimizer.fleet.LeftBehind.Touched;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.SharedPrices;
import depot.optimizer.solve.UseRange;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Plans depots that share limits, by prices on these (Dantzig and Wolfe 1960; smoothed after Wentges 1997; both from memory).
 *
 * <p>A search that begins with what an earlier one has left behind ({@link FleetStart}) has plans before it has prices. Where these lead to the end it
 * ends there ({@link StartSteps}); else it goes on as any other, with a fuller pool:
 *
 * <ol>
 *   <li>Prices come from the linear relaxations of the depots ({@link PriceSearch}).
 *   <li>At these prices every depot is planned in whole numbers. The bounds of these searches give the fleet's bound; their plans, replayed, are the pool.
 *   <li>Some depots after others are planned at lower and higher prices as well, until a master in whole numbers finds a choice of plans that keeps the
 *       limits and is within the gap.
 *   <li>How many packs visiting crews get is settled for home and host alike ({@link VisitCounts}).
 *   <li>What the choice leaves of the limits is offered to single depots ({@link LeftOver}).
 *   <li>A fleet that is small enough is planned as one model; of a bigger one a few depots are planned together while the others keep their plans ({@link GroupSteps}).
 *   <li>While the gap is open, the master's relaxation gives new prices.
 * </ol>
 */
final class SharedFleet {

    /** Share of the gap asked for that the prices' search and the master may leave. */
    static final double PRICES_SHARE = 0.1;

    private static final int MOST_ROUNDS = 12;

    /** Multiples of the prices at which depots are planned so that the master can mix. */
    private static final double LOWER = 0.8;

    private static final double HIGHER = 1.25;

    /** Depots that are planned at such prices before the master is asked again: this many, or this share of all. */
    private static final int FEWEST_VARIED = 16;

    private static final double SHARE_VARIED = 0.0625;

    /** Times that what is left of the limits is offered after one choice; the same where plans take long. */
    private static final int MOST_OFFERS = 3;

    private static final int OFFERS_OF_LONG_PLANS = 1;

    /** Share of the gap that a round has to close where plans take long, or the search ends. */
    private static final double LEAST_CLOSED = 0.1;

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final RunControl control;
    private final List<SharedLimit> limits;
    private final ProgressListener progress;
    private final QuantityPrices quantities;
    private final FleetBound bounds;
    private final int mostAsOne;
    private final FleetStanding standing;
    private final FleetStart start;
    private final boolean longPlans;

    SharedFleet(
            Scenario scenario,
            List<DepotRollout> rollouts,
            ProgressListener progress,
            RunControl control,
            Optional<LeftBehind> left,
            Touched touched) {
        this(scenario, rollouts, progress, control, GroupSteps.MOST_OF_FLEET, left, touched);
    }

    /**
     * @param mostAsOne variables of the biggest fleet that is planned as one model
     * @param left what an earlier search has left behind
     * @param touched what becomes of its plans of depots that have changed
     */
    SharedFleet(
            Scenario scenario,
            List<DepotRollout> rollouts,
            ProgressListener progress,
            RunControl control,
            int mostAsOne,
            Optional<LeftBehind> left,
            Touched touched) {
        this.mostAsOne = mostAsOne;
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.progress = progress;
        this.control = control;
        limits = SharedLimits.of(scenario);
        quantities = new QuantityPrices(scenario);
        bounds = new FleetBound(limits, quantities);
        standing = new FleetStanding(scenario, rollouts, limits, quantities, bounds, progress);
        longPlans = rollouts.stream().anyMatch(DepotRollout::manyDays);
        start = new FleetStart(scenario, rollouts, limits, bounds, left, touched);
    }

    /**
     * The fleet's plan with its bound.
     *
     * @throws NothingFitsException when no plan that keeps the shared limits is found
     */
    FleetPlan solve() {
        try (DepotPricing pricing = new DepotPricing(scenario, rollouts, control)) {
            search(pricing);
            if (standing.best().isEmpty()) {
                throw new LeastUse(scenario, limits, pricing, bounds).explained();
            }
        } catch (StoppedException e) {
            if (standing.best().isEmpty()) {
                throw e;
            }
            progress.stopped();
        }
        return FinishedFleet.of(scenario, rollouts, standing.best().orElseThrow(), standing.bound(), standing.proof());
    }

    /** What the search has left in its pool, for another one to begin with. */
    List<FleetColumn> pool() {
        standing.trim(standing.bestPrices());
        return standing.pool().columns();
    }

    private void search(DepotPricing pricing) {
        PriceSearch search =
                new PriceSearch(rollouts, limits, quantities, bounds, pricing, PRICES_SHARE * standing.gap());
        GroupSteps groups = new GroupSteps(scenario, rollouts, limits, standing, pricing, mostAsOne);
        begin(pricing, search, groups);
        if (standing.closed()) {
            return;
        }
        PriceSearch.Found found = search.search();
        progress.pricesFound(found.bound(), found.objective());
        standing.share(found);
        VisitSteps visits = new VisitSteps(standing, pricing, rollouts, limits, found);
        SharedPrices prices = found.prices();
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            double open = standing.open();
            double bound = standing.bound();
            boolean exceeds = standing.planAll(pricing, prices);
            standing.choose();
            if (round == 1) {
                vary(pricing, prices, exceeds ? List.of(HIGHER, LOWER) : List.of(LOWER, HIGHER));
            }
            settleCrews(pricing, found.prices());
            visits.improve();
            offerWhatIsLeft(pricing);
            groups.improve();
            if (standing.closed() || (round > 1 && stuck(open, bound))) {
                return;
            }
            standing.trim(prices);
            SharedPrices relaxed = standing.relaxed().prices();
            prices = bounds.valid(
                    standing.best().isEmpty() && round > 1
                            ? times(relaxed, 1 + round)
                            : PriceSearch.mixed(limits, standing.bestPrices(), relaxed));
        }
    }

    /** Whether a round has done too little for another one: nothing at all, or, where plans take long, not much of what was open before. */
    private boolean stuck(double open, double bound) {
        if (longPlans && Double.isFinite(standing.open())) {
            return standing.open() > (1 - LEAST_CLOSED) * open;
        }
        return standing.open() >= open && standing.bound() <= bound;
    }

    /** Goes as far as what was left behind leads. Where that is not to the end, the search begins anew, with a pool that is the richer for it. */
    private void begin(DepotPricing pricing, PriceSearch search, GroupSteps groups) {
        if (!start.given()) {
            return;
        }
        StartSteps steps = new StartSteps(start, standing, pricing, rollouts.size());
        steps.atOldPrices();
        if (standing.closed()) {
            return;
        }
        steps.atNewPrices(search.near(start.prices(), standing.pool().columns()));
        offerWhatIsLeft(pricing);
        groups.improveSmallest();
    }

    /**
     * Plans depots at lower and higher prices, some at a time from all over the fleet, until a choice is within the gap; where plans take long, until there is
     * any choice.
     *
     * @param multiples of the prices, the one first that is likelier to help
     */
    private void vary(DepotPricing pricing, SharedPrices prices, List<Double> multiples) {
        int size = Math.max(FEWEST_VARIED, (int) Math.ceil(SHARE_VARIED * rollouts.size()));
        int groups = (rollouts.size() + size - 1) / size;
        for (int group = 0; group < groups && !variedEnough(); group++) {
            int first = group;
            List<Integer> some = IntStream.range(0, rollouts.size())
                    .filter(d -> d % groups == first)
                    .boxed()
                    .toList();
            for (double multiple : multiples) {
                if (!variedEnough()) {
                    standing.ask(pricing, standing.questions(some, bounds.valid(times(prices, multiple))));
                    standing.choose();
                }
            }
        }
    }

    private boolean variedEnough() {
        return standing.closed() || (longPlans && standing.best().isPresent());
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
        if (crews.isEmpty() || standing.closed()) {
            return;
        }
        double[] weights = standing.relaxed().weights();
        List<Map<SharedLimit, UseRange>> settled =
                new CrewPlaces(rollouts, crews, standing.pool().columns()).settled(weights);
        standing.askPossible(
                pricing,
                IntStream.range(0, rollouts.size())
                        .mapToObj(d -> new Question(d, prices, standing.allowed(d), settled.get(d)))
                        .toList());
        standing.choose();
    }

    private void offerWhatIsLeft(DepotPricing pricing) {
        LeftOver leftOver = new LeftOver(rollouts, limits, bounds);
        int most = longPlans ? OFFERS_OF_LONG_PLANS : MOST_OFFERS;
        for (int offer = 0; offer < most && standing.best().isPresent() && !standing.closed(); offer++) {
            double cost = standing.cost();
            standing.askPossible(
                    pricing,
                    leftOver.questions(
                            standing.best().get(), standing.bestPrices(), standing.depotBounds(), standing::allowed));
            standing.choose();
            if (standing.cost() >= cost) {
                return;
            }
        }
    }
}
