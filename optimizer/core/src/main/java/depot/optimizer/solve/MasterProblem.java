package depot.optimizer.solve;

import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Expr;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Var;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.DayVars;
import depot.optimizer.model.DepotModel;
import depot.optimizer.model.LimitKind;
import depot.optimizer.problem.DepotProblem;
import java.util.ArrayList;
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
    private final CapacityVars capacity;
    private final DepotProblem problem;
    private final Map<Integer, DayVars> binding = new TreeMap<>();
    private final Map<Integer, Outline> outlines = new TreeMap<>();
    private final List<Expr> cycles = new ArrayList<>();

    /** Cost of a day that is not here in full, and its charges of each pack type a year. */
    private record Outline(Var cost, List<Var> charges) {}

    /**
     * @param model that the depot is added to
     * @param bindingDays indices of the kinds of day in full
     * @param terms one for each kind of day
     * @param open limits that may be loosened; none for a plan
     */
    MasterProblem(
            MipModel model,
            DepotProblem problem,
            SortedSet<Integer> bindingDays,
            List<RecourseCut> cuts,
            List<DayTerms> terms,
            Set<LimitKind> open) {
        this.model = model;
        this.problem = problem;
        capacity = DepotModel.addCapacity(model, problem, open);
        problem.packTypes().forEach(p -> cycles.add(new Expr()));
        for (int day : bindingDays) {
            DayVars vars =
                    DepotModel.addDay(model, problem, capacity, problem.days().get(day), "d" + day, terms.get(day));
            model.cost(1, vars.recourseCost());
            binding.put(day, vars);
            addCycles(vars);
        }
        for (int day = 0; day < problem.days().size(); day++) {
            if (!bindingDays.contains(day)) {
                addOutline(day, cuts);
            }
        }
        DepotModel.addWear(model, problem, capacity, cycles);
    }

    private void addCycles(DayVars day) {
        for (int p = 0; p < cycles.size(); p++) {
            cycles.get(p).add(1, day.cycles().get(p));
        }
    }

    private void addOutline(int day, List<RecourseCut> cuts) {
        Var cost = model.continuous("cost@d" + day, 0, MipModel.INFINITY);
        model.cost(1, cost);
        List<Var> charges = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            charges.add(model.continuous("charges_p" + p + "@d" + day, 0, MipModel.INFINITY));
            cycles.get(p).add(1, charges.get(p));
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
        List<Var> all = capacity.all();
        for (int j = 0; j < cut.slopes().length; j++) {
            row.add(-cut.slopes()[j], all.get(j));
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
     * What one more charge costs at a point: nothing for pack types that age wears out first, and its share of a new pack for the others.
     *
     * @return one list, or two where use and age are about even: the dear one first, then the cheap one
     */
    List<List<Double>> cyclePrices(Outcome outcome) {
        List<Double> dear = new ArrayList<>();
        List<Double> cheap = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            double full = DepotModel.costPerCycle(problem, p);
            double use =
                    outcome.value(cycles.get(p)) / problem.packTypes().get(p).cycleLife();
            double age = 0;
            for (Var[] pool : capacity.packs()) {
                age += outcome.value(pool[p]) / problem.packTypes().get(p).calendarYears();
            }
            dear.add(use < age * (1 - ABOUT_EVEN) ? 0 : full);
            cheap.add(use > age * (1 + ABOUT_EVEN) ? full : 0);
        }
        return dear.equals(cheap) ? List.of(dear) : List.of(dear, cheap);
    }

    MipModel model() {
        return model;
    }

    CapacityVars capacity() {
        return capacity;
    }

    Outcome relaxed(Limits limits) {
        return Engine.SIMPLEX.solve(model, limits);
    }

    /** The linear relaxation with given purchases, in the order of {@link CapacityVars#all()}. */
    Outcome relaxedAt(double[] values, Limits limits) {
        return Engine.SIMPLEX.solve(model.fixed(capacity.all(), values), limits);
    }

    Outcome solve(Stage stage, Limits limits) {
        return Engine.BRANCH_AND_CUT.solve(as(stage), limits);
    }

    /** Looks for points that cost no more than an amount; where there are none, the outcome is infeasible. */
    Outcome solveBelow(double amount, Stage stage, Limits limits) {
        return Engine.BRANCH_AND_CUT.solve(as(stage).costingAtMost(amount), limits);
    }

    private MipModel as(Stage stage) {
        if (stage == Stage.EXACT) {
            return model;
        }
        Set<Var> whole = new HashSet<>(capacity.all());
        for (DayVars day : binding.values()) {
            whole.addAll(day.carriedPacks());
            whole.addAll(day.loadedChargers());
        }
        return model.wholeOnly(whole);
    }

    /**
     * Solves in whole numbers with nothing less, and hardly more, bought than the given values. Finds plans and proves nothing.
     *
     * @param values in the order of {@link CapacityVars#all()}
     */
    Outcome solveJustAbove(double[] values, Limits limits) {
        double[] upper = new double[values.length];
        double[] lower = values.clone();
        for (int j = 0; j < values.length; j++) {
            boolean whole = capacity.isWhole(j);
            lower[j] = whole ? values[j] : Double.NEGATIVE_INFINITY;
            upper[j] = whole ? values[j] + MOST_ADDED : Double.POSITIVE_INFINITY;
        }
        return Engine.BRANCH_AND_CUT.solve(model.within(capacity.all(), lower, upper), limits);
    }

    /** Values of what is bought, in the order of {@link CapacityVars#all()}. */
    double[] capacityValues(Outcome outcome) {
        return capacity.all().stream()
                .mapToDouble(var -> wholeIfNear(outcome.value(var)))
                .toArray();
    }

    private static double wholeIfNear(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-5 ? Math.rint(value) : value;
    }

    DaySolution bindingSolution(int day, Outcome outcome) {
        return new DaySolution(day, binding.get(day), outcome);
    }
}
