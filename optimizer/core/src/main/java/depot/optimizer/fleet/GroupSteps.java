package depot.optimizer.fleet;

import depot.optimizer.mip.Limits;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.solve.WholeFleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Improves a fleet's plan by planning a few depots together while the others keep their plans (large neighbourhood search, Shaw 1998, from memory). A
 * fleet that is small enough is planned as one model, which also gives a bound and may find a first plan.
 */
final class GroupSteps {

    /** Variables of the biggest fleet, and of the biggest group, that is planned as one model. */
    static final int MOST_OF_FLEET = 8_000;

    /** In its place: not even the smallest fleet is planned as one model. */
    static final int NEVER_AS_ONE = 0;

    private static final int MOST_OF_GROUP = 4_000;

    /** Nodes for a model, times its variables. */
    private static final long WORK_FOR_FLEET = 3_000_000;

    private static final long WORK_FOR_GROUP = 400_000;

    /** Groups that are planned before the next ones are chosen, and the most there are. */
    private static final int AT_ONCE = 4;

    private static final int MOST_GROUPS = 40;

    /** Groups that come before one model of a fleet. */
    private static final int MOST_FIRST_GROUPS = 24;

    /** Groups for each depot that find nothing, before the search ends. */
    private static final int MOST_IN_VAIN = 2;

    /** Times that the whole fleet is searched for something cheaper. */
    private static final int MOST_PROOFS = 2;

    /** Share of the gap that a search of the whole fleet aims at, so that rounding does no harm. */
    private static final double ALMOST = 0.999;

    /** Least share of its cost by which a plan has to be better. */
    private static final double ROUNDING = 1e-9;

    private final Scenario scenario;
    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final FleetStanding standing;
    private final DepotPricing pricing;
    private final int mostOfFleet;
    private final int[] sizes;
    private final GroupChoice choice;
    private boolean asked;
    private int groups;

    /**
     * @param mostOfFleet variables of the biggest fleet that is planned as one model
     */
    GroupSteps(
            Scenario scenario,
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            FleetStanding standing,
            DepotPricing pricing,
            int mostOfFleet) {
        this.mostOfFleet = mostOfFleet;
        this.scenario = scenario;
        this.rollouts = rollouts;
        this.limits = limits;
        this.standing = standing;
        this.pricing = pricing;
        sizes = new int[rollouts.size()];
        choice = new GroupChoice(rollouts, this::size, MOST_OF_GROUP);
    }

    /** Models are built only when a search comes so far: fleets whose prices close the gap need none. */
    private int size(int depot) {
        if (sizes[depot] == 0) {
            sizes[depot] = variables(rollouts.get(depot));
        }
        return sizes[depot];
    }

    private int variables(DepotRollout rollout) {
        return new WholeFleet(
                        scenario.name(),
                        List.of(rollout),
                        List.of(),
                        new QuantityPrices(scenario),
                        List.of(WholeFleet.terms(rollout)))
                .model()
                .variableCount();
    }

    /** Whether the fleet has no more variables than that. */
    private boolean small(int most) {
        int sum = 0;
        for (int d = 0; d < rollouts.size() && sum <= most; d++) {
            sum += size(d);
        }
        return sum <= most;
    }

    /** Plans a fleet as one model that is no bigger than a group may be: that takes no longer than other prices for all of its depots. */
    void improveSmallest() {
        if (!standing.closed() && small(Math.min(mostOfFleet, MOST_OF_GROUP))) {
            planAsOne();
        }
    }

    /**
     * Plans a small fleet as one model, then one group after the other, while that finds anything. In a fleet of more depots than a group some groups come first:
     * where they close the gap, they do so sooner.
     */
    void improve() {
        if (!standing.closed() && rollouts.size() > GroupChoice.MOST_DEPOTS) {
            planGroups(MOST_FIRST_GROUPS);
        }
        planAsOne();
        planGroups(MOST_GROUPS);
    }

    /** Once: what one model of the fleet has to say, it says at the first time. */
    private void planAsOne() {
        if (asked || standing.closed()) {
            return;
        }
        asked = true;
        if (!small(mostOfFleet)) {
            return;
        }
        List<Integer> all = IntStream.range(0, rollouts.size()).boxed().toList();
        for (int proof = 0; proof < MOST_PROOFS && !standing.closed(); proof++) {
            double before = standing.cost();
            DepotGroup group = new DepotGroup(scenario, rollouts, limits, all, List.of());
            double less = Math.max(ALMOST * standing.gap(), ROUNDING);
            double most = standing.best().isEmpty() ? Double.POSITIVE_INFINITY : before - less * Math.abs(before);
            List<DepotGroup.Found> found = plan(List.of(group), most, work(WORK_FOR_FLEET, group));
            standing.boundedAsOne(found.get(0).bound());
            if (standing.cost() >= before) {
                return;
            }
        }
    }

    private void planGroups(int most) {
        int inVain = 0;
        int depots = rollouts.size();
        while (standing.best().isPresent() && !standing.closed() && inVain < MOST_IN_VAIN * depots && groups < most) {
            double before = standing.cost();
            List<DepotGroup> next =
                    choice.next(gains(), AT_ONCE).stream().map(this::group).toList();
            if (next.isEmpty()) {
                return;
            }
            groups += next.size();
            double less = Math.max(SharedFleet.PRICES_SHARE * standing.gap(), ROUNDING);
            plan(next, before - less * Math.abs(before), work(WORK_FOR_GROUP, next.get(0)));
            inVain = standing.cost() < before ? 0 : inVain + next.size();
        }
    }

    private DepotGroup group(List<Integer> depots) {
        List<FleetColumn> others = standing.best().orElseThrow().columns().stream()
                .filter(column -> !depots.contains(column.depot()))
                .toList();
        return new DepotGroup(scenario, rollouts, limits, depots, others);
    }

    /** Plans groups, adds what is found to the pool and chooses from it. */
    private List<DepotGroup.Found> plan(List<DepotGroup> some, double most, Limits work) {
        List<Supplier<DepotGroup.Found>> searches = new ArrayList<>();
        some.forEach(group -> searches.add(() -> group.below(most, work)));
        List<DepotGroup.Found> found = pricing.others(searches);
        for (int g = 0; g < some.size(); g++) {
            List<Integer> depots = some.get(g).depots();
            List<ProvenDepot> plans = found.get(g).plans();
            for (int i = 0; i < plans.size(); i++) {
                standing.pool().add(depots.get(i), plans.get(i));
            }
            standing.askPossible(pricing, some.get(g).within(found.get(g), standing::allowed));
        }
        double before = standing.cost();
        standing.takeBest();
        if (standing.cost() < before) {
            standing.tell();
        }
        return found;
    }

    private Limits work(long work, DepotGroup group) {
        int variables = group.depots().stream().mapToInt(this::size).sum();
        SolveSettings settings = scenario.solve();
        long nodes = Math.min(settings.nodeLimit(), work / variables + 1);
        return new Limits(standing.gap() / 2, nodes, settings.timeLimitSeconds(), settings.seed());
    }

    /** How much less each depot might cost at the prices with the best bound. */
    private double[] gains() {
        Optional<FleetMaster.Choice> best = standing.best();
        double[] gains = new double[rollouts.size()];
        best.ifPresent(chosen -> chosen.columns()
                .forEach(column -> gains[column.depot()] = column.cost()
                        + standing.bestPrices().of(column.use())
                        - standing.depotBounds().get(column.depot())));
        return gains;
    }
}
