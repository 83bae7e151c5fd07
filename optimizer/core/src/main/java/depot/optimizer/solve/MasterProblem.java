package depot.optimizer.solve;

import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Expr;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.PricedParts;
import depot.optimizer.mip.Var;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.DayVars;
import depot.optimizer.model.DepotModel;
import depot.optimizer.model.LimitKind;
import depot.optimizer.model.PhaseNames;
import depot.optimizer.model.RolloutVars;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.DepotRollout.RolloutDay;
import depot.optimizer.problem.SharedLimit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * What is bought, with the binding days in full and every other day as a cost that cuts hold up. A relaxation of the depot's whole problem: its bound
 * is the depot's bound.
 */
final class MasterProblem {

    /** Most pieces of anything that a plan found near another may have more than it. */
    private static final double MOST_ADDED = 2;

    /** Use and age that differ by less than this share count as even. */
    private static final double ABOUT_EVEN = 0.02;

    private final MipModel model;
    private final RolloutVars rolloutVars;
    private final DepotRollout rollout;
    private final List<RolloutDay> days;
    private final List<Var> all = new ArrayList<>();
    private final BitSet whole = new BitSet();
    private final Map<Integer, DayVars> binding = new TreeMap<>();
    private final Map<Integer, Outline> outlines = new TreeMap<>();
    private final List<List<Expr>> cycles = new ArrayList<>();

    /** Cost of a day that is not here in full, and its charges of each pack type a year. */
    private record Outline(Var cost, List<Var> charges) {}

    /**
     * @param model that the depot is added to
     * @param bindingDays places of the days in full, in {@link DepotRollout#days()}
     * @param terms one for each day
     * @param open limits that may be loosened; none for a plan
     */
    MasterProblem(
            MipModel model,
            DepotRollout rollout,
            SortedSet<Integer> bindingDays,
            List<RecourseCut> cuts,
            List<DayTerms> terms,
            Set<LimitKind> open) {
        this.model = model;
        this.rollout = rollout;
        days = rollout.days();
        rolloutVars = DepotModel.addRollout(model, rollout, open);
        for (CapacityVars phase : rolloutVars.phases()) {
            for (int j = 0; j < phase.all().size(); j++) {
                whole.set(all.size(), phase.isWhole(j));
                all.add(phase.all().get(j));
            }
            List<Expr> ofPhase = new ArrayList<>();
            rollout.first().packTypes().forEach(p -> ofPhase.add(new Expr()));
            cycles.add(ofPhase);
        }
        for (int day : bindingDays) {
            model.part(days.get(day).phase());
            addFull(day, terms.get(day));
        }
        for (int day = 0; day < days.size(); day++) {
            if (!bindingDays.contains(day)) {
                model.part(days.get(day).phase());
                addOutline(day, cuts);
            }
        }
        model.part(0);
        for (int f = 0; f < cycles.size(); f++) {
            PhaseNames.enter(model, rollout, f);
            DepotModel.addWear(
                    model, rollout.phases().get(f), rolloutVars.phases().get(f), cycles.get(f));
            PhaseNames.leave(model, rollout, f);
        }
    }

    private void addFull(int day, DayTerms terms) {
        RolloutDay at = days.get(day);
        CapacityVars capacity = rolloutVars.phases().get(at.phase());
        DayVars vars = DepotModel.addDay(model, rollout.problemOf(at), capacity, rollout.kind(at), "d" + day, terms);
        model.cost(1, vars.recourseCost());
        binding.put(day, vars);
        List<Expr> ofPhase = cycles.get(at.phase());
        for (int p = 0; p < ofPhase.size(); p++) {
            ofPhase.get(p).add(1, vars.cycles().get(p));
        }
    }

    /** Adds prices of shared limits to what the depot's plans cost. */
    void price(SharedPrices prices) {
        prices.forEach((limit, price) -> model.cost(price, use(limit)));
    }

    /** Keeps what is used of a shared limit within a range. */
    void restrict(SharedLimit limit, UseRange range) {
        if (range.least() == range.most()) {
            model.equal("settled " + limit.name(), use(limit), range.most());
            return;
        }
        if (range.least() > Double.NEGATIVE_INFINITY) {
            model.atLeast("least " + limit.name(), use(limit), range.least());
        }
        if (range.most() < Double.POSITIVE_INFINITY) {
            model.atMost("most " + limit.name(), use(limit), range.most());
        }
    }

    /** What the purchases use of a shared limit. */
    Expr use(SharedLimit limit) {
        int phase = 0;
        while (phase < rollout.phases().size() - 1
                && !rollout.phases().get(phase).phase().equals(limit.phase())) {
            phase++;
        }
        return rolloutVars.use().of(limit, phase);
    }

    private void addOutline(int day, List<RecourseCut> cuts) {
        Var cost = model.continuous("cost@d" + day, 0, MipModel.INFINITY);
        model.cost(1, cost);
        List<Var> charges = new ArrayList<>();
        List<Expr> ofPhase = cycles.get(days.get(day).phase());
        for (int p = 0; p < ofPhase.size(); p++) {
            charges.add(model.continuous("charges_p" + p + "@d" + day, 0, MipModel.INFINITY));
            ofPhase.get(p).add(1, charges.get(p));
        }
        outlines.put(day, new Outline(cost, charges));
        int number = 0;
        for (RecourseCut cut : cuts) {
            if (cut.day() == day) {
                addCut("cut" + number++ + "@d" + day, cut, outlines.get(day));
            }
        }
    }

    /** The slack absorbs the rounding of the simplex, so that a cut never cuts too deep. */
    private void addCut(String name, RecourseCut cut, Outline outline) {
        Expr row = new Expr().add(1, outline.cost());
        for (int p = 0; p < outline.charges().size(); p++) {
            row.add(cut.cyclePrices().get(p), outline.charges().get(p));
        }
        double bound = cut.value();
        List<Var> ofPhase =
                rolloutVars.phases().get(days.get(cut.day()).phase()).all();
        for (int j = 0; j < cut.slopes().length; j++) {
            row.add(-cut.slopes()[j], ofPhase.get(j));
            bound -= cut.slopes()[j] * cut.at()[j];
        }
        model.atLeast(name, row, bound - 1e-6 * Math.abs(cut.value()) - 1e-6);
    }

    /** What a point takes a day to cost, with a price for its charges. */
    double judged(int day, Outcome outcome, List<Double> cyclePrices) {
        DayVars full = binding.get(day);
        double cost =
                outcome.value(full == null ? new Expr().add(1, outlines.get(day).cost()) : full.recourseCost());
        for (int p = 0; p < cyclePrices.size(); p++) {
            double charges = full == null
                    ? outcome.value(outlines.get(day).charges().get(p))
                    : outcome.value(full.cycles().get(p));
            cost += cyclePrices.get(p) * charges;
        }
        return cost;
    }

    /**
     * What one more charge on a day costs at a point: nothing for pack types that age wears out first, and its share of a new pack for the others.
     *
     * @return one list, or two where use and age are about even: the dear one first, then the cheap one
     */
    List<List<Double>> cyclePrices(int day, Outcome outcome) {
        int phase = days.get(day).phase();
        DepotProblem problem = rollout.phases().get(phase);
        List<Double> dear = new ArrayList<>();
        List<Double> cheap = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            double full = DepotModel.costPerCycle(problem, p);
            double use = outcome.value(cycles.get(phase).get(p))
                    / problem.packTypes().get(p).cycleLife();
            double age = 0;
            for (Var[] pool : rolloutVars.phases().get(phase).packs()) {
                age += outcome.value(pool[p]) / problem.packTypes().get(p).calendarYears();
            }
            dear.add(use < age * (1 - ABOUT_EVEN) ? 0 : full);
            cheap.add(use > age * (1 + ABOUT_EVEN) ? full : 0);
        }
        return dear.equals(cheap) ? List.of(dear) : List.of(dear, cheap);
    }

    /** Nodes that take as much work with any master: the more variables, the longer a node takes. */
    long nodes(long work) {
        return work / model.variableCount() + 1;
    }

    MipModel model() {
        return model;
    }

    /** What is bought, of a rollout of one phase. */
    CapacityVars capacity() {
        return rolloutVars.phases().get(0);
    }

    Outcome relaxed(Limits limits) {
        return Engine.SECOND_SIMPLEX.solve(model, limits);
    }

    /** The linear relaxation with given purchases, in the order of {@link #capacityValues}. */
    Outcome relaxedAt(double[] values, Limits limits) {
        return Engine.SIMPLEX.solve(model.fixed(all, values), limits);
    }

    Outcome solve(Stage stage, Limits limits) {
        return Engine.BRANCH_AND_CUT.solve(as(stage), limits);
    }

    /**
     * The same, phase by phase: what joins them is priced as in the linear relaxation.
     *
     * @param linear the master's linear relaxation
     * @param limits of each phase; the gap is that of the whole
     */
    Outcome solveByPhase(Stage stage, Outcome linear, Limits limits) {
        return new PricedParts(as(stage), linear.duals(), linear.objective()).solve(Engine.BRANCH_AND_CUT, limits);
    }

    /** Looks for points that cost no more than an amount; where there are none, the outcome is infeasible. */
    Outcome solveBelow(double amount, Stage stage, Limits limits) {
        return Engine.BRANCH_AND_CUT.solve(as(stage).costingAtMost(amount), limits);
    }

    private MipModel as(Stage stage) {
        if (stage == Stage.EXACT) {
            return model;
        }
        Set<Var> wholeVars = new HashSet<>(all);
        for (DayVars day : binding.values()) {
            wholeVars.addAll(day.carriedPacks());
            wholeVars.addAll(day.loadedChargers());
        }
        return model.wholeOnly(wholeVars);
    }

    /**
     * Solves in whole numbers with nothing less, and hardly more, bought than the given values. Finds plans and proves nothing.
     *
     * @param values in the order of {@link #capacityValues}
     */
    Outcome solveJustAbove(double[] values, Limits limits) {
        return Engine.BRANCH_AND_CUT.solve(justAbove(values, false), limits);
    }

    /**
     * The same, one phase after the other, with the same crews and no less demand paid for: of days that are not in full only cuts are known, which take more
     * crews and less demand to be cheaper than they are.
     *
     * @param limits of each phase; the gap is that of the whole
     */
    Outcome solveJustAboveByPhase(double[] values, Limits limits) {
        MipModel near = justAbove(values, true);
        Outcome linear = Engine.SECOND_SIMPLEX.solve(near, limits);
        return linear.hasPoint()
                ? new PricedParts(near, linear.duals(), linear.objective()).solveInTurn(Engine.BRANCH_AND_CUT, limits)
                : linear;
    }

    private MipModel justAbove(double[] values, boolean strictly) {
        Set<Var> held = new HashSet<>();
        if (strictly) {
            rolloutVars.phases().forEach(phase -> held.addAll(phase.crews()));
        }
        double[] upper = new double[values.length];
        double[] lower = values.clone();
        for (int j = 0; j < values.length; j++) {
            lower[j] = whole.get(j) || strictly ? values[j] : Double.NEGATIVE_INFINITY;
            double more = held.contains(all.get(j)) ? 0 : MOST_ADDED;
            upper[j] = whole.get(j) ? values[j] + more : Double.POSITIVE_INFINITY;
        }
        return model.within(all, lower, upper);
    }

    /** Values of what is bought, phase by phase, in each in the order of {@link CapacityVars#all()}. */
    double[] capacityValues(Outcome outcome) {
        return all.stream().mapToDouble(var -> wholeIfNear(outcome.value(var))).toArray();
    }

    private static double wholeIfNear(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-5 ? Math.rint(value) : value;
    }

    DaySolution bindingSolution(int day, Outcome outcome) {
        return new DaySolution(day, binding.get(day), outcome);
    }
}
