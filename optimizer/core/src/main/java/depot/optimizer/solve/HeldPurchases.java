package depot.optimizer.solve;

import depot.optimizer.finance.PresentCost;
import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.mip.Var;
import depot.optimizer.model.CapacityDecision;
import depot.optimizer.model.CapacityPoint;
import depot.optimizer.model.CapacityVars;
import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.DayVars;
import depot.optimizer.model.DecisionReader;
import depot.optimizer.model.DepotModel;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SeasonDay;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.scenario.Season;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Plans a depot's days with what it has and nothing more. Visits are for as many packs as is settled. Energy that this does not cover is short, at its
 * price. Days are planned one after the other; the demand paid for is what the days before needed, and a day that needs more pays for the rest. The plan
 * has a cost and no bound.
 */
public final class HeldPurchases {

    /** Share of the gap that a single day may leave. */
    private static final double DAY_SHARE = 0.5;

    private final DepotProblem problem;
    private final CapacityDecision capacity;
    private final CapacityVars shape;
    private final double[] firstPeaks;
    private int variables;
    private int rows;
    private long nodes;

    /**
     * Takes over what was bought.
     *
     * @param bought a plan of the same depot; its days only say how much demand to begin with
     * @param visits packs that the depot's crews may count on elsewhere, and that it has to charge for guests, by
     *     {@link depot.optimizer.problem.Visit.Service#key()}; none where it has no entry
     */
    public HeldPurchases(DepotProblem problem, DepotPlan bought, Map<String, Integer> visits) {
        this.problem = problem;
        capacity = BoughtPieces.of(problem, bought, visits);
        shape = CapacityVars.relaxed(new MipModel("shape"), problem, Set.of());
        firstPeaks = new double[problem.seasons().size()];
        for (DayPlan day : bought.days()) {
            for (SeasonDay occurrence : day.occurrences()) {
                raise(firstPeaks, List.of(occurrence.season()), day.demandKw());
            }
        }
    }

    /**
     * The plan.
     *
     * @param tightenings one for each kind of day
     * @throws NoPlanException when a day has no plan within the limits
     */
    public DepotPlan plan(List<Tightening> tightenings) {
        double[] peaks = problem.tariff().billsDemand() ? firstPeaks.clone() : new double[firstPeaks.length];
        List<DayDecision> days = new ArrayList<>();
        for (int d = 0; d < problem.days().size(); d++) {
            DaySolution solution = day(d, tightenings.get(d), peaks);
            DayDecision decision = new DecisionReader(problem, solution.outcome()).day(solution.vars());
            raise(peaks, problem.days().get(d).seasons(), decision.demandKw());
            days.add(decision);
        }
        DepotPlan plan = new PlanAssembler(problem, capacity, days).assemble(stop(0));
        double cost = plan.costs().stream().mapToDouble(CostLine::presentCost).sum();
        return plan.withStop(stop(cost));
    }

    private void raise(double[] peaks, List<String> seasons, double kw) {
        for (int s = 0; s < peaks.length; s++) {
            if (seasons.contains(problem.seasons().get(s).id())) {
                peaks[s] = Math.max(peaks[s], kw);
            }
        }
    }

    /** Where shortage is forbidden it has a price only to have a plan at all: within the gap it could hide, so that days are tried without it first. */
    private DaySolution day(int d, Tightening tightening, double[] peaks) {
        if (problem.shortageForbidden()) {
            DaySolution covered = day(d, new DayTerms(tightening, ShortagePolicy.REFUSE), peaks);
            if (covered.outcome().hasPoint()) {
                return covered;
            }
        }
        DaySolution solution = day(d, new DayTerms(tightening, ShortagePolicy.ALLOW), peaks);
        if (!solution.outcome().hasPoint()) {
            throw new NoPlanException("depot " + problem.depot().id()
                    + ": no plan for a day with what is there, within the limits ("
                    + solution.outcome().stop() + ")");
        }
        return solution;
    }

    private DaySolution day(int d, DayTerms terms, double[] peaks) {
        MipModel model = new MipModel("held" + d);
        CapacityVars vars = CapacityVars.held(model, problem, CapacityPoint.of(shape, capacity, peaks));
        DayVars day = DepotModel.addDay(model, problem, vars, problem.days().get(d), "d" + d, terms);
        model.cost(1, day.recourseCost());
        for (int p = 0; p < problem.packTypes().size(); p++) {
            model.cost(DepotModel.costPerCycle(problem, p), day.cycles().get(p));
        }
        addDemand(model, vars);
        Outcome outcome = Engine.BRANCH_AND_CUT.solve(
                model,
                new Limits(
                        problem.settings().relativeGap() * DAY_SHARE,
                        problem.settings().nodeLimit(),
                        problem.settings().timeLimitSeconds(),
                        problem.settings().seed()));
        variables = Math.max(variables, model.variableCount());
        rows = Math.max(rows, model.rowCount());
        nodes += outcome.nodes();
        return new DaySolution(d, day, outcome);
    }

    private void addDemand(MipModel model, CapacityVars vars) {
        List<Var> all = vars.all();
        int first = all.size() - problem.seasons().size();
        for (int s = 0; s < problem.seasons().size(); s++) {
            Season season = problem.seasons().get(s);
            double months = PresentCost.months(season.weeksPerYear());
            model.cost(
                    problem.tariff().demandPricePerKwMonth()
                            * months
                            * problem.money().electricityAnnuity(),
                    all.get(first + s));
        }
    }

    private SolveStop stop(double cost) {
        return new SolveStop(
                "purchases kept, days planned anew",
                Certificate.of(cost, 0, problem.settings().relativeGap()),
                1,
                0,
                problem.days().size(),
                0,
                variables,
                rows,
                nodes);
    }
}
