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
