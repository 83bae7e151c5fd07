package depot.optimizer.solve;

import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
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

    private final DepotProblem problem;
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
     * @param terms one for each kind of day
     * @param policy that of all terms
     * @param tightened how often the days were tightened before
     */
    DepotSearch(DepotProblem problem, List<DayTerms> terms, ShortagePolicy policy, int tightened) {
        this.problem = problem;
        this.terms = terms;
        this.policy = policy;
        this.tightened = tightened;
        for (int d = 0; d < problem.days().size(); d++) {
            days.add(new DayProblem(problem, d, terms.get(d)));
        }
        plans = new PlanSearch(problem, days, this::master);
    }

    ShortagePolicy policy() {
        return policy;
    }

    /** With tighter days; begins near the plan found here, and keeps cuts and bound. */
    DepotSearch tightened(List<DayTerms> tighter, int times) {
        DepotSearch next = new DepotSearch(problem, tighter, policy, times);
        next.cuts.addAll(cuts);
        next.binding.addAll(binding);
        next.bound = bound;
        next.start = plans.bestValues();
        return next;
    }

    /** From the beginning, since cuts made without shortage do not hold with it. */
    DepotSearch allowingShortage() {
        List<DayTerms> allowing = terms.stream()
                .map(t -> new DayTerms(t.tightening(), ShortagePolicy.ALLOW))
                .toList();
        return new DepotSearch(problem, allowing, ShortagePolicy.ALLOW, tightened);
    }

    /**
     * The plan with its bound.
     *
     * @throws NoPlanException when no plan is found within the limits
     * @throws NeedsCannotBeMetException when shortage is refused and no purchases meet every need
     */
    DepotPlan run() {
        if (start.length > 0) {
            Optional<DepotPlan> near = nearStart();
            if (near.isPresent()) {
                return near.get();
            }
        }
        if (binding.isEmpty() && !days.isEmpty()) {
            binding.addAll(new LinearSearch(days, cuts, this::relaxed).bindingDays(heaviestDay()));
        }
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
            if (misses.stream().mapToDouble(Miss::amount).sum() > (1 - MASTER_SHARE) * gap() * cost) {
                addCuts(
                        point.master().capacityValues(point.outcome()),
                        point.master().cyclePrices(point.outcome()));
                join(misses, gap() * cost);
            } else if (stage == Stage.EXPLORING) {
                stage = Stage.EXACT;
            } else {
                return best(round, point);
            }
        }
    }

    private boolean proven() {
        return plans.best().isPresent()
                && Certificate.of(plans.bestCost(), bound, gap()).proven();
    }

    private DepotPlan best(int round, MasterPoint point) {
        return plans.best().orElseThrow(() -> noPlan(point.outcome())).withStop(stop(round, point));
    }

    /** Shows that nothing of this master costs less than the best plan by more than the gap; what it finds on the way may be better plans. */
    private boolean prove(int round, MasterPoint point, Stage stage) {
        double objective = point.outcome().objective();
        for (int i = 0; i < MOST_PROOFS && plans.best().isPresent(); i++) {
            double cutoff = (1 - gap() * ALMOST) * plans.bestCost();
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
        long most = problem.settings().nodeLimit();
        return stage == Stage.EXPLORING ? (long) Math.ceil(most * EXPLORING_SHARE) : most;
    }

    /** A plan near the one found before the days were tightened. */
    private Optional<DepotPlan> nearStart() {
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
            throw new NeedsCannotBeMetException(problem.depot().id());
        }
    }

    private NoPlanException noPlan(Outcome outcome) {
        return new NoPlanException("depot " + problem.depot().id() + ": no plan within the limits (" + outcome.stop()
                + "); raise the node or time limit");
    }

    private double gap() {
        return problem.settings().relativeGap();
    }

    private Limits limits(double relativeGap, long nodeLimit) {
        return new Limits(
                relativeGap,
                nodeLimit,
                problem.settings().timeLimitSeconds(),
                problem.settings().seed());
    }

    private MasterProblem master(SortedSet<Integer> full) {
        MipModel model = new MipModel(problem.depot().id());
        return new MasterProblem(model, problem, full, cuts.all(), terms, Set.of());
    }

    private void addCuts(double[] values, List<List<Double>> cyclePrices) {
        for (int d = 0; d < days.size(); d++) {
            if (!binding.contains(d)) {
                for (List<Double> prices : cyclePrices) {
                    days.get(d).cut(values, prices).ifPresent(cuts::add);
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
                problem.days().size(),
                binding.size(),
                point.master().model().variableCount(),
                point.master().model().rowCount(),
                nodes + plans.nodes());
    }

    /** The day with the most energy to carry, measured in packs at its temperature: a good first guess at what binds. */
    private int heaviestDay() {
        int heaviest = 0;
        double most = -1;
        for (int d = 0; d < problem.days().size(); d++) {
            DayKind kind = problem.days().get(d);
            double load = 0;
            for (Trip trip : kind.trips()) {
                load += trip.needs().stream().mapToDouble(n -> n.totalWh()).sum() / kind.packCapacityFactor();
            }
            if (load > most) {
                most = load;
                heaviest = d;
            }
        }
        return heaviest;
    }
}
