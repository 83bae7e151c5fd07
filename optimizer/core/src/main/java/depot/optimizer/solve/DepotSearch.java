package depot.optimizer.solve;

import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.DepotRollout.RolloutDay;
import depot.optimizer.problem.SharedLimit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The search for one depot's plan and its bound.
 *
 * <p>The master holds what is bought and the binding days in full; every other kind of day stands in it as a cost held up by cuts. It is a relaxation
 * throughout, so that its bound is valid. Around each of its points plans are looked for; where the best of them is not within the gap of the bound,
 * the master is searched for anything cheaper, and then the days that it misjudged most join the binding days.
 */
final class DepotSearch {

    /** Share of the gap that a first look at a master may leave; the rest is for the days outside it and for whole numbers of loads. */
    private static final double MASTER_SHARE = 0.5;

    /** Nodes for a first look at a master, times its variables. */
    private static final long FIRST_WORK = 300_000;

    /** Most attempts at a proof from one master; each but the last finds a better plan. */
    private static final int MOST_PROOFS = 3;

    /** Share of the gap that a proof aims at, so that rounding does no harm. */
    private static final double ALMOST = 0.999;

    /** Share of the node limit for masters with fractions of loads. */
    private static final double EXPLORING_SHARE = 0.5;

    /** Days that may join the binding ones after one master. */
    private static final int MOST_NEW_DAYS = 2;

    private final DepotRollout rollout;
    private final SharedPrices prices;
    private final double tolerance;
    private final Map<SharedLimit, UseRange> ranges;
    private final List<DayTerms> terms;
    private final ShortagePolicy policy;
    private final int tightened;
    private final List<DayProblem> days = new ArrayList<>();
    private final CutPool cuts = new CutPool();
    private final TreeSet<Integer> binding = new TreeSet<>();
    private final PlanSearch plans;
    private double bound = Double.NEGATIVE_INFINITY;
    private double[] start = {};
    private long nodes;

    /**
     * @param prices of shared limits, which the depot's plans pay beside their own cost
     * @param tolerance how far cost and bound may be apart; 0: as the gap asked for allows
     * @param ranges how much of some shared limits plans may use
     * @param terms one for each day of each phase
     * @param policy that of all terms
     * @param tightened how often the days were tightened before
     */
    DepotSearch(
            DepotRollout rollout,
            SharedPrices prices,
            double tolerance,
            Map<SharedLimit, UseRange> ranges,
            List<DayTerms> terms,
            ShortagePolicy policy,
            int tightened) {
        this.rollout = rollout;
        this.prices = prices;
        this.tolerance = tolerance;
        this.ranges = ranges;
        this.terms = terms;
        this.policy = policy;
        this.tightened = tightened;
        int firstValue = 0;
        int phase = 0;
        for (int d = 0; d < rollout.days().size(); d++) {
            for (; phase < rollout.days().get(d).phase(); phase++) {
                firstValue += purchases(rollout.phases().get(phase));
            }
            days.add(new DayProblem(rollout, d, firstValue, terms.get(d)));
        }
        plans = new PlanSearch(rollout, prices, days, this::master);
    }

    private static int purchases(DepotProblem problem) {
        return CapacityVars.relaxed(new MipModel("shape"), problem, Set.of())
                .all()
                .size();
    }

    ShortagePolicy policy() {
        return policy;
    }

    /** With tighter days; begins near the plan found here, and keeps cuts and bound. */
    DepotSearch tightened(List<DayTerms> tighter, int times) {
        DepotSearch next = new DepotSearch(rollout, prices, tolerance, ranges, tighter, policy, times);
        next.cuts.addAll(cuts);
        next.binding.addAll(binding);
        next.bound = bound;
        next.start = plans.bestValues();
        return next;
    }

    /** At other prices of shared limits; keeps cuts and binding days, since what a day costs does not depend on these prices. */
    DepotSearch repriced(SharedPrices others, double otherTolerance, Map<SharedLimit, UseRange> within) {
        DepotSearch next = new DepotSearch(rollout, others, otherTolerance, within, terms, policy, tightened);
        next.cuts.addAll(cuts);
        next.binding.addAll(binding);
        return next;
    }

    /** From the beginning, since cuts made without shortage do not hold with it. */
    DepotSearch allowingShortage() {
        List<DayTerms> allowing = terms.stream()
                .map(t -> new DayTerms(t.tightening(), ShortagePolicy.ALLOW))
                .toList();
        return new DepotSearch(rollout, prices, tolerance, ranges, allowing, ShortagePolicy.ALLOW, tightened);
    }

    /**
     * The plan with its bound.
     *
     * @throws NoPlanException when no plan is found within the limits
     * @throws NeedsCannotBeMetException when shortage is refused and no purchases meet every need
     */
    RolloutPlan run() {
        if (start.length > 0) {
            Optional<RolloutPlan> near = nearStart();
            if (near.isPresent()) {
                return near.get();
            }
        }
        findBindingDays();
        Stage stage = Stage.EXPLORING;
        for (int round = 1; ; round++) {
            MasterPoint point = firstLook(stage);
            bound = Math.max(bound, point.outcome().bound());
            List<Miss> misses = plans.around(point, planned(stage), stop(round, point)).stream()
                    .filter(miss -> !binding.contains(miss.day()))
                    .toList();
            if (proven() || prove(round, point, stage)) {
                return best(round, point);
            }
            double cost = Math.min(plans.bestCost(), point.outcome().objective());
            if (misses.stream().mapToDouble(Miss::amount).sum() > (1 - MASTER_SHARE) * allowed(cost)) {
                addCuts(point);
                join(misses, allowed(cost));
            } else if (stage == Stage.EXPLORING) {
                stage = Stage.EXACT;
            } else {
                return best(round, point);
            }
        }
    }

    private void findBindingDays() {
        if (binding.isEmpty() && !days.isEmpty()) {
            binding.addAll(new LinearSearch(days, cuts, this::relaxed).bindingDays(heaviestDays()));
        }
    }

    /**
     * The linear relaxation.
     *
     * @throws NeedsCannotBeMetException when shortage is refused and no purchases meet every need
     */
    LinearPoint linear() {
        findBindingDays();
        MasterPoint point = relaxed(binding);
        if (!point.outcome().hasPoint()) {
            throw noPlan(point.outcome());
        }
        Map<SharedLimit, Double> use = new LinkedHashMap<>();
        for (SharedLimit limit : rollout.limits()) {
            use.put(limit, point.outcome().value(point.master().use(limit)));
        }
        double objective = point.outcome().objective();
        return new LinearPoint(objective, objective - prices.of(use), use);
    }

    /** No plan costs less, at the prices of shared limits. */
    double bound() {
        return Math.min(bound, plans.bestCost());
    }

    private boolean proven() {
        return plans.best().isPresent() && plans.bestCost() - bound <= allowed(plans.bestCost()) * (1 + 1e-9);
    }

    /** How far cost and bound may be apart. */
    private double allowed(double cost) {
        return tolerance > 0 ? tolerance : gap() * Math.abs(cost);
    }

    private RolloutPlan best(int round, MasterPoint point) {
        return plans.best().orElseThrow(() -> noPlan(point.outcome())).withStop(stop(round, point));
    }

    /** Shows that nothing of this master costs less than the best plan by more than the gap; what it finds on the way may be better plans. */
    private boolean prove(int round, MasterPoint point, Stage stage) {
        double objective = point.outcome().objective();
        for (int i = 0; i < MOST_PROOFS && plans.best().isPresent(); i++) {
            double cutoff = plans.bestCost() - ALMOST * allowed(plans.bestCost());
            if (objective <= cutoff) {
                return false;
            }
            Outcome below = point.master().solveBelow(cutoff, stage, limits(gap() * MASTER_SHARE, nodes(stage)));
            nodes += below.nodes();
            boolean nothing = below.stop() == Outcome.Stop.INFEASIBLE;
            bound = Math.max(bound, nothing ? cutoff : Math.min(cutoff, below.bound()));
            if (below.hasPoint()) {
                MasterPoint cheaper = new MasterPoint(point.master(), below);
                plans.around(cheaper, planned(stage), stop(round, cheaper));
                objective = below.objective();
            }
            if (proven()) {
                return true;
            }
            if (!below.hasPoint()) {
                return false;
            }
        }
        return false;
    }

    /** Days that a point of the master plans in whole numbers. */
    private SortedSet<Integer> planned(Stage stage) {
        return stage == Stage.EXACT ? binding : Collections.emptySortedSet();
    }

    private long nodes(Stage stage) {
        long most = rollout.settings().nodeLimit();
        return stage == Stage.EXPLORING ? (long) Math.ceil(most * EXPLORING_SHARE) : most;
    }

    /** A plan near the one found before the days were tightened. */
    private Optional<RolloutPlan> nearStart() {
        MasterProblem outlines = master(Collections.emptySortedSet());
        MasterPoint point = new MasterPoint(outlines, outlines.relaxedAt(start, limits(0, 0)));
        if (!point.outcome().hasPoint()) {
            return Optional.empty();
        }
        plans.around(point, Collections.emptySortedSet(), stop(0, point));
        return plans.best().map(plan -> plan.withStop(stop(0, point)));
    }

    private void join(List<Miss> misses, double allowed) {
        misses.stream()
                .limit(MOST_NEW_DAYS)
                .filter(miss -> miss.equals(misses.get(0)) || miss.amount() > allowed)
                .forEach(miss -> binding.add(miss.day()));
    }

    /** A point of the master with little work; with more, where little finds none. */
    private MasterPoint firstLook(Stage stage) {
        MasterProblem master = master(binding);
        long few = Math.min(nodes(stage), FIRST_WORK / master.model().variableCount() + 1);
        Outcome outcome = master.solve(stage, limits(gap() * MASTER_SHARE, few));
        nodes += outcome.nodes();
        if (!outcome.hasPoint() && outcome.stop() != Outcome.Stop.INFEASIBLE) {
            outcome = master.solve(stage, limits(gap() * MASTER_SHARE, nodes(stage)));
            nodes += outcome.nodes();
        }
        refuseInfeasible(outcome);
        if (!outcome.hasPoint()) {
            throw noPlan(outcome);
        }
        return new MasterPoint(master, outcome);
    }

    private MasterPoint relaxed(SortedSet<Integer> full) {
        MasterProblem master = master(full);
        Outcome outcome = master.relaxed(limits(0, 0));
        refuseInfeasible(outcome);
        return new MasterPoint(master, outcome);
    }

    private void refuseInfeasible(Outcome outcome) {
        if (outcome.stop() == Outcome.Stop.INFEASIBLE && policy == ShortagePolicy.REFUSE) {
            throw new NeedsCannotBeMetException(rollout.depot().id());
        }
    }

    private NoPlanException noPlan(Outcome outcome) {
        return new NoPlanException("depot " + rollout.depot().id() + ": no plan within the limits (" + outcome.stop()
                + "); raise the node or time limit");
    }

    private double gap() {
        return rollout.settings().relativeGap();
    }

    private Limits limits(double relativeGap, long nodeLimit) {
        return new Limits(
                relativeGap,
                gap() > 0 ? tolerance * relativeGap / gap() : 0,
                nodeLimit,
                rollout.settings().timeLimitSeconds(),
                rollout.settings().seed());
    }

    private MasterProblem master(SortedSet<Integer> full) {
        MipModel model = new MipModel(rollout.depot().id());
        MasterProblem master = new MasterProblem(model, rollout, full, cuts.all(), terms, Set.of());
        master.price(prices);
        ranges.forEach(master::restrict);
        return master;
    }

    private void addCuts(MasterPoint point) {
        double[] values = point.master().capacityValues(point.outcome());
        for (int d = 0; d < days.size(); d++) {
            if (!binding.contains(d)) {
                for (List<Double> charge : point.master().cyclePrices(d, point.outcome())) {
                    days.get(d).cut(values, charge).ifPresent(cuts::add);
                }
            }
        }
    }

    private SolveStop stop(int round, MasterPoint point) {
        double cost = plans.bestCost();
        Certificate certificate = Certificate.of(cost, Math.min(cost, bound), gap());
        String reason = certificate.proven() ? "gap reached" : "limit reached or days outside the gap";
        boolean limit = point.outcome().stop() == Outcome.Stop.LIMIT_REACHED;
        return new SolveStop(
                limit && !certificate.proven() ? "node or time limit" : reason,
                certificate,
                round,
                tightened,
                days.size(),
                binding.size(),
                point.master().model().variableCount(),
                point.master().model().rowCount(),
                nodes + plans.nodes());
    }

    /** In each phase the day with the most energy to carry, measured in packs at its temperature: a good first guess at what binds. */
    private List<Integer> heaviestDays() {
        Map<Integer, Integer> heaviest = new TreeMap<>();
        double[] most = new double[rollout.phases().size()];
        for (int d = 0; d < days.size(); d++) {
            RolloutDay day = rollout.days().get(d);
            double load = load(rollout.kind(day));
            if (!heaviest.containsKey(day.phase()) || load > most[day.phase()]) {
                most[day.phase()] = load;
                heaviest.put(day.phase(), d);
            }
        }
        return List.copyOf(heaviest.values());
    }

    private static double load(DayKind kind) {
        return kind.trips().stream()
                .flatMap(trip -> trip.needs().stream())
                .mapToDouble(need -> need.totalWh() / kind.packCapacityFactor())
                .sum();
    }
}
