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
import depot.optimizer.model.Tightening;
import depot.optimizer.problem.DepotProblem;
import java.util.List;
import java.util.Optional;

/** One kind of day with what is bought held fixed. */
final class DayProblem {

    private final DepotProblem problem;
    private final int day;
    private final double[] capacityValues;
    private final List<Double> cyclePrices;
    private final MipModel model;
    private final CapacityVars capacity;
    private final DayVars vars;

    /**
     * @param capacityValues in the order of {@link CapacityVars#all()}
     * @param cyclePrices what a charge of each pack type counts for, beside the day's own cost
     */
    DayProblem(
            DepotProblem problem, int day, Tightening tightening, double[] capacityValues, List<Double> cyclePrices) {
        this.problem = problem;
        this.day = day;
        this.capacityValues = capacityValues;
        this.cyclePrices = cyclePrices;
        model = new MipModel("day" + day);
        capacity = CapacityVars.fixed(model, problem, capacityValues);
        vars = DepotModel.addDay(
                model,
                problem,
                capacity,
                problem.days().get(day),
                "d" + day,
                new DayTerms(tightening, ShortagePolicy.ALLOW));
        model.cost(1, vars.recourseCost());
        for (int p = 0; p < cyclePrices.size(); p++) {
            model.cost(cyclePrices.get(p), vars.cycles().get(p));
        }
    }

    /** The cut at the fixed capacity; empty when the simplex gives up, since a missing cut only makes the bound weaker. */
    Optional<RecourseCut> cut() {
        Outcome outcome = Engine.SIMPLEX.solve(model, new Limits(0, 1, 60, 1));
        if (outcome.stop() != Outcome.Stop.GAP_REACHED) {
            return Optional.empty();
        }
        List<Var> all = capacity.all();
        double[] slopes = new double[all.size()];
        for (int j = 0; j < slopes.length; j++) {
            slopes[j] = outcome.reducedCosts()[all.get(j).index()];
        }
        return Optional.of(new RecourseCut(day, cyclePrices, outcome.objective(), slopes, capacityValues));
    }

    /** The day's best plan. */
    DaySolution solve(Limits limits) {
        Outcome outcome = Engine.BRANCH_AND_CUT.solve(model, limits);
        if (!outcome.hasPoint()) {
            throw new NoPlanException(
                    "depot " + problem.depot().id() + ": no plan for a day within the limits (" + outcome.stop() + ")");
        }
        return new DaySolution(day, vars, outcome);
    }
}
