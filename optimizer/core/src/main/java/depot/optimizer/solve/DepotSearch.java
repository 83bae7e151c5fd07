package depot.optimizer.solve;

import depot.optimizer.mip.Outcome;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.SharedLimit;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    /** Nodes for a proof with some effort, times the master's variables. */
    private static final long MORE_WORK = 2_000_000;

    /** Most attempts at a proof from one master; each but the last finds a better plan. */
    private static final int MOST_PROOFS = 3;

    /** Share of the gap that a proof aims at, so that rounding does no harm. */
    private static final double ALMOST = 0.999;

    /** Share of the node limit for masters with fractions of loads. */
    private static final double EXPLORING_SHARE = 0.5;

    /** Days that may join the binding ones after one master. */
    private static final int MOST_NEW_DAYS = 2;

    private final SearchTask task;
    private final List<DayProblem> days;
    private final CutPool cuts = new CutPool();
    private final TreeSet<Integer> binding = new TreeSet<>();
    private final PlanSearch plans;
    private double bound = Double.NEGATIVE_INFINITY;
    private double[] start = {};
    private long nodes;
    private int round;
    private Stage stage = Stage.EXPLORING;
    private MasterPoint point;
    private List<Miss> misses = List.of();
    private boolean finished;

    DepotSearch(SearchTask task) {
        this.task = task;
        days = task.days();
        plans = new PlanSearch(task.rollout(), task.prices(), days, task.byPhase(), this::master);
    }

    ShortagePolicy policy() {
        return task.policy();
    }

    /**
     * With tighter days; keeps cuts and bound. Begins near the plan found here, unless the days now say for the first time that chargers are fed whole: then
     * it was bought for what it cannot do.
     */
    DepotSearch tightened(List<DayTerms> tighter, int times) {
        DepotSearch next = new DepotSearch(task.withTerms(tighter, task.policy(), times));
        next.cuts.addAll(cuts);
        next.binding.addAll(binding);
        next.bound = bound;
        next.start = wholeChargers(tighter) && !wholeChargers(task.terms()) ? new double[0] : plans.bestValues();
        return next;
    }

    private static boolean wholeChargers(List<DayTerms> terms) {
        return terms.stream().anyMatch(day -> day.tightening().wholeChargers());
    }

    /** At other prices of shared limits; keeps cuts and binding days, since what a day costs does not depend on these prices. */
    DepotSearch repriced(SharedPrices others, double otherTolerance, Map<SharedLimit, UseRange> within) {
        DepotSearch next = new DepotSearch(task.priced(others, otherTolerance, within));
        next.cuts.addAll(cuts);
        next.binding.addAll(binding);
        return next;
    }

    /** From the beginning, since cuts made without shortage do not hold with it. */
    DepotSearch allowingShortage() {
        List<DayTerms> allowing = task.terms().stream()
                .map(t -> new DayTerms(t.tightening(), ShortagePolicy.ALLOW))
                .toList();
        return new DepotSearch(task.withTerms(allowing, ShortagePolicy.ALLOW, task.tightened()));
    }

    /**
     * The plan with its bound. Asked again for more effort, the search goes on.
     *
     * @throws NoPlanException when no plan is found within the limits
     * @throws NeedsCannotBeMetException when shortage is refused and no purchases meet every need
     */
    RolloutPlan run(Effort effort) {
        if (round == 0) {
            Optional<RolloutPlan> near = start.length > 0 ? nearStart() : Optional.empty();
            if (near.isPresent()) {
                return near.get();
            }
            findBindingDays();
            nextRound();
        }
        while (!finished
                && !proven()
                && !(effort == Effort.FIRST && plans.best().isPresent())) {
            if (prove(effort) || (effort == Effort.MORE && !misjudged())) {
                break;
            }
            finished = !widened();
            if (!finished) {
                nextRound();
            }
        }
        return best();
    }

    /** A look at a master, and plans around it. */
    private void nextRound() {
        round++;
        point = firstLook();
        bound = Math.max(bound, point.outcome().bound());
        misses = plans.around(point, planned(), stop(round, point)).stream()
                .filter(miss -> !binding.contains(miss.day()))
                .toList();
    }

    /** Takes in more days, or what was left fractional; false: there is nothing more to take in. */
    private boolean widened() {
        if (misjudged()) {
            addCuts(point);
            join(misses, allowed());
            return true;
        }
        boolean exploring = stage == Stage.EXPLORING;
        stage = Stage.EXACT;
        return exploring;
    }

    /** Whether the days outside cost more than the point took them to cost, by more than they may. */
    private boolean misjudged() {
        return misses.stream().mapToDouble(Miss::amount).sum() > (1 - FirstLook.MASTER_SHARE) * allowed();
    }

    private double allowed() {
        return task.allowed(Math.min(plans.bestCost(), point.outcome().objective()));
    }

    private void findBindingDays() {
        if (binding.isEmpty() && !days.isEmpty()) {
            binding.addAll(new LinearSearch(days, cuts, this::relaxed).bindingDays(task.heaviestDays()));
        }
    }

    /**
     * The linear relaxation.
     *
     * @throws NeedsCannotBeMetException when shortage is refused and no purchases meet every need
     */
    LinearPoint linear() {
        findBindingDays();
        days.forEach(DayProblem::release);
        MasterPoint linear = relaxed(binding);
        if (!linear.outcome().hasPoint()) {
            throw task.noPlan(linear.outcome());
        }
        Map<SharedLimit, Double> use = new LinkedHashMap<>();
        for (SharedLimit limit : task.rollout().limits()) {
            use.put(limit, linear.outcome().value(linear.master().use(limit)));
        }
        double objective = linear.outcome().objective();
        return new LinearPoint(objective, objective - task.prices().of(use), use);
    }

    /** No plan costs less, at the prices of shared limits. */
    double bound() {
        return Math.min(bound, plans.bestCost());
    }

    private boolean proven() {
        return plans.best().isPresent() && plans.bestCost() - bound <= task.allowed(plans.bestCost()) * (1 + 1e-9);
    }

    private RolloutPlan best() {
        return plans.best().orElseThrow(() -> task.noPlan(point.outcome())).withStop(stop(round, point));
    }

    /** Shows that nothing of this master costs less than the best plan by more than the gap; what it finds on the way may be better plans. */
    private boolean prove(Effort effort) {
        long most = effort == Effort.ALL
                ? nodes()
                : Math.min(nodes(), point.master().nodes(MORE_WORK));
        double objective = point.outcome().objective();
        for (int i = 0; i < MOST_PROOFS && plans.best().isPresent(); i++) {
            double cutoff = plans.bestCost() - ALMOST * task.allowed(plans.bestCost());
            if (objective <= cutoff) {
                return false;
            }
            Outcome below =
                    point.master().solveBelow(cutoff, stage, task.limits(task.gap() * FirstLook.MASTER_SHARE, most));
            nodes += below.nodes();
            boolean nothing = below.stop() == Outcome.Stop.INFEASIBLE;
            bound = Math.max(bound, nothing ? cutoff : Math.min(cutoff, below.bound()));
            if (below.hasPoint()) {
                MasterPoint cheaper = new MasterPoint(point.master(), below);
                plans.around(cheaper, planned(), stop(round, cheaper));
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
    private SortedSet<Integer> planned() {
        return stage == Stage.EXACT ? binding : Collections.emptySortedSet();
    }

    private long nodes() {
        long most = task.rollout().settings().nodeLimit();
        return stage == Stage.EXPLORING ? (long) Math.ceil(most * EXPLORING_SHARE) : most;
    }

    /** A plan near the one found before the days were tightened. */
    private Optional<RolloutPlan> nearStart() {
        MasterProblem outlines = master(Collections.emptySortedSet());
        MasterPoint near = new MasterPoint(outlines, outlines.relaxedAt(start, task.limits(0, 0)));
        if (!near.outcome().hasPoint()) {
            return Optional.empty();
        }
        plans.around(near, Collections.emptySortedSet(), stop(0, near));
        return plans.best().map(plan -> plan.withStop(stop(0, near)));
    }

    private void join(List<Miss> worstFirst, double allowed) {
        worstFirst.stream()
                .limit(MOST_NEW_DAYS)
                .filter(miss -> miss.equals(worstFirst.get(0)) || miss.amount() > allowed)
                .forEach(miss -> binding.add(miss.day()));
    }

    private MasterPoint firstLook() {
        MasterProblem master = master(binding);
        Outcome outcome = new FirstLook(task, stage, nodes()).at(master);
        nodes += outcome.nodes();
        return new MasterPoint(master, outcome);
    }

    private MasterPoint relaxed(SortedSet<Integer> full) {
        MasterProblem master = master(full);
        Outcome outcome = master.relaxed(task.limits(0, 0));
        task.refuseInfeasible(outcome);
        return new MasterPoint(master, outcome);
    }

    private MasterProblem master(SortedSet<Integer> full) {
        return task.master(full, cuts);
    }

    private void addCuts(MasterPoint at) {
        double[] values = at.master().capacityValues(at.outcome());
        for (int d = 0; d < days.size(); d++) {
            if (!binding.contains(d)) {
                for (List<Double> charge : at.master().cyclePrices(d, at.outcome())) {
                    days.get(d).cut(values, charge).ifPresent(cuts::add);
                }
            }
        }
    }

    private SolveStop stop(int masters, MasterPoint at) {
        double cost = plans.bestCost();
        Certificate certificate = Certificate.of(cost, Math.min(cost, bound), task.gap());
        String reason = certificate.proven() ? "gap reached" : "limit reached or days outside the gap";
        boolean limit = at.outcome().stop() == Outcome.Stop.LIMIT_REACHED;
        return new SolveStop(
                limit && !certificate.proven() ? "node or time limit" : reason,
                certificate,
                masters,
                task.tightened(),
                days.size(),
                binding.size(),
                at.master().model().variableCount(),
                at.master().model().rowCount(),
                nodes + plans.nodes());
    }
}
