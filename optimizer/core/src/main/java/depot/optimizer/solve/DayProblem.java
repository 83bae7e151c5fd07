package depot.optimizer.solve;

import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Var;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.DayVars;
import depot.optimizer.model.DepotModel;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.problem.DepotProblem;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One kind of day by itself, for any purchases and any price of a charge. Its plans keep to the terms. Its cuts always allow shortage at its price,
 * so that there is one for whatever is bought; where shortage is refused they are below the day's true cost, and hold all the same.
 */
final class DayProblem {

    private static final Limits LINEAR = new Limits(0, 1, 60, 1);

    private final int day;
    private final Fixable plans;
    private final Fixable relaxation;

    DayProblem(DepotProblem problem, int day, DayTerms terms) {
        this.day = day;
        plans = new Fixable(problem, day, terms);
        relaxation = terms.shortage() == ShortagePolicy.ALLOW
                ? plans
                : new Fixable(problem, day, new DayTerms(terms.tightening(), ShortagePolicy.ALLOW));
    }

    /** The day as a program in which purchases can be fixed and charges priced. */
    private static final class Fixable {

        private final MipModel model;
        private final List<Var> capacity;
        private final DayVars vars;

        private Fixable(DepotProblem problem, int day, DayTerms terms) {
            model = new MipModel("day" + day);
            CapacityVars all = CapacityVars.relaxed(model, problem, Set.of());
            capacity = all.all();
            vars = DepotModel.addDay(model, problem, all, problem.days().get(day), "d" + day, terms);
            model.cost(1, vars.recourseCost());
        }

        private MipModel at(double[] capacityValues, List<Double> cyclePrices) {
            MipModel fixed = model.fixed(capacity, capacityValues);
            for (int p = 0; p < cyclePrices.size(); p++) {
                fixed.cost(cyclePrices.get(p), vars.cycles().get(p));
            }
            return fixed;
        }
    }

    /**
     * The cut at some purchases; empty when the simplex gives up, since a missing cut only makes the bound weaker.
     *
     * @param capacityValues in the order of {@link CapacityVars#all()}
     * @param cyclePrices what a charge of each pack type counts for, beside the day's own cost
     */
    Optional<RecourseCut> cut(double[] capacityValues, List<Double> cyclePrices) {
        Outcome outcome = Engine.SIMPLEX.solve(relaxation.at(capacityValues, cyclePrices), LINEAR);
        if (outcome.stop() != Outcome.Stop.GAP_REACHED) {
            return Optional.empty();
        }
        double[] slopes = relaxation.capacity.stream()
                .mapToDouble(var -> outcome.reducedCosts()[var.index()])
                .toArray();
        return Optional.of(RecourseCut.of(day, cyclePrices, outcome.objective(), slopes, capacityValues));
    }

    /** The day's best plan, for purchases and prices of charges as above; empty when there is none, or none within the limits. */
    Optional<DaySolution> solve(double[] capacityValues, List<Double> cyclePrices, Limits limits) {
        Outcome outcome = Engine.BRANCH_AND_CUT.solve(plans.at(capacityValues, cyclePrices), limits);
        return outcome.hasPoint() ? Optional.of(new DaySolution(day, plans.vars, outcome)) : Optional.empty();
    }
}
