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

    private final MipModel model;
    private final CapacityVars capacity;
    private final Map<Integer, DayVars> binding = new TreeMap<>();

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
        capacity = DepotModel.addCapacity(model, problem, open);
        List<Expr> cycles = new ArrayList<>();
        problem.packTypes().forEach(p -> cycles.add(new Expr()));
        for (int day : bindingDays) {
            DayVars vars =
                    DepotModel.addDay(model, problem, capacity, problem.days().get(day), "d" + day, terms.get(day));
            model.cost(1, vars.recourseCost());
            binding.put(day, vars);
            addAll(cycles, vars.cycles());
        }
        for (int day = 0; day < problem.days().size(); day++) {
            if (!bindingDays.contains(day)) {
                addOutline(problem, day, cuts, cycles);
            }
        }
        DepotModel.addWear(model, problem, capacity, cycles);
    }

    private static void addAll(List<Expr> sums, List<Expr> terms) {
        for (int p = 0; p < sums.size(); p++) {
            sums.get(p).add(1, terms.get(p));
        }
    }

    private void addOutline(DepotProblem problem, int day, List<RecourseCut> cuts, List<Expr> cycles) {
        Var cost = model.continuous("cost@d" + day, 0, MipModel.INFINITY);
        model.cost(1, cost);
        List<Expr> charges = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            charges.add(new Expr().add(1, model.continuous("charges_p" + p + "@d" + day, 0, MipModel.INFINITY)));
        }
        addAll(cycles, charges);
        int number = 0;
        for (RecourseCut cut : cuts) {
            if (cut.day() == day) {
                Expr row = new Expr().add(1, cost);
                double bound = cut.value();
                for (int p = 0; p < charges.size(); p++) {
                    row.add(cut.cyclePrices().get(p), charges.get(p));
                }
                List<Var> all = capacity.all();
                for (int j = 0; j < cut.slopes().length; j++) {
                    row.add(-cut.slopes()[j], all.get(j));
                    bound -= cut.slopes()[j] * cut.at()[j];
                }
                // The slack absorbs the rounding of the simplex, so that the cut never cuts too deep.
                model.atLeast("cut" + number++ + "@d" + day, row, bound - 1e-6 * Math.abs(cut.value()) - 1e-6);
            }
        }
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

    Outcome solve(Limits limits) {
        return Engine.BRANCH_AND_CUT.solve(model, limits);
    }

    /** Solves with whole purchases and whole packs on board, while what is loaded into chargers may be fractions. */
    Outcome solveWithFractionsOfLoads(Limits limits) {
        Set<Var> whole = new HashSet<>(capacity.all());
        binding.values().forEach(day -> whole.addAll(day.carriedPacks()));
        return Engine.BRANCH_AND_CUT.solve(model.wholeOnly(whole), limits);
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
