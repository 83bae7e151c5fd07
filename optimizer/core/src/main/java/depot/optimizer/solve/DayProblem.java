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
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.DepotRollout.RolloutDay;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One kind of day by itself, for any purchases and any price of a charge. Its plans keep to the terms. Its cuts always allow shortage at its price,
 * and guests' packs to be turned away, so that there is one for whatever is bought; where shortage is refused they are below the day's true cost, and hold all the same.
 */
final class DayProblem {

    private static final Limits LINEAR = new Limits(0, 1, 60, 1);

    private final int day;
    private final DepotProblem problem;
    private final DayKind kind;
    private final DayTerms terms;
    private final int firstValue;
    private Fixable plans;
    private Fixable relaxation;

    /**
     * @param day place in {@link DepotRollout#days()}
     * @param firstValue place of its phase's first purchase among all purchases
     */
    DayProblem(DepotRollout rollout, int day, int firstValue, DayTerms terms) {
        this.day = day;
        this.firstValue = firstValue;
        this.terms = terms;
        RolloutDay at = rollout.days().get(day);
        problem = rollout.problemOf(at);
        kind = rollout.kind(at);
    }

    /** Programs are made when they are asked for: a depot that is asked at other prices needs those of few days, and often of none. */
    private Fixable plans() {
        if (plans == null) {
            plans = new Fixable(problem, kind, terms);
        }
        return plans;
    }

    private Fixable relaxation() {
        ShortagePolicy relaxed = kind.guests().isEmpty() ? ShortagePolicy.ALLOW : ShortagePolicy.RELAX;
        if (terms.shortage() == relaxed) {
            return plans();
        }
        if (relaxation == null) {
            relaxation = new Fixable(problem, kind, new DayTerms(terms.tightening(), relaxed));
        }
        return relaxation;
    }

    /** Lets go of its programs, which take more memory than all else that is known of a depot. */
    void release() {
        plans = null;
        relaxation = null;
    }

    /** The problem of the day's phase. */
    DepotProblem problem() {
        return problem;
    }

    /** The day as a program in which purchases can be fixed and charges priced. */
    private static final class Fixable {

        private final MipModel model;
        private final List<Var> capacity;
        private final DayVars vars;

        private Fixable(DepotProblem problem, DayKind kind, DayTerms terms) {
            model = new MipModel("day");
            CapacityVars all = CapacityVars.relaxed(model, problem, Set.of());
            capacity = all.all();
            vars = DepotModel.addDay(model, problem, all, kind, "d", terms);
            model.cost(1, vars.recourseCost());
        }

        private MipModel at(double[] capacityValues, List<Double> cyclePrices) {
            MipModel fixed = model.fixed(capacity, capacityValues);
            for (int p = 0; p < cyclePrices.size(); p++) {
                fixed.cost(cyclePrices.get(p), vars.cycles().get(p));
            }
            return fixed;
        }

        /** Of the purchases of all phases those of one. */
        private double[] ofPhase(double[] allValues, int firstValue) {
            return Arrays.copyOfRange(allValues, firstValue, firstValue + capacity.size());
        }
    }

    /**
     * The cut at some purchases of all phases; empty when the simplex gives up, since a missing cut only makes the bound weaker.
     *
     * @param allValues of all phases, in each in the order of {@link CapacityVars#all()}
     * @param cyclePrices what a charge of each pack type counts for, beside the day's own cost
     */
    Optional<RecourseCut> cut(double[] allValues, List<Double> cyclePrices) {
        Fixable program = relaxation();
        double[] capacityValues = program.ofPhase(allValues, firstValue);
        Outcome outcome = Engine.SIMPLEX.solve(program.at(capacityValues, cyclePrices), LINEAR);
        if (outcome.stop() != Outcome.Stop.GAP_REACHED) {
            return Optional.empty();
        }
        double[] slopes = program.capacity.stream()
                .mapToDouble(var -> outcome.reducedCosts()[var.index()])
                .toArray();
        return Optional.of(RecourseCut.of(day, cyclePrices, outcome.objective(), slopes, capacityValues));
    }

    /** The day's best plan, for purchases and prices of charges as above; empty when there is none, or none within the limits. */
    Optional<DaySolution> solve(double[] allValues, List<Double> cyclePrices, Limits limits) {
        Fixable program = plans();
        Outcome outcome =
                Engine.BRANCH_AND_CUT.solve(program.at(program.ofPhase(allValues, firstValue), cyclePrices), limits);
        return outcome.hasPoint() ? Optional.of(new DaySolution(day, program.vars, outcome)) : Optional.empty();
    }
}
