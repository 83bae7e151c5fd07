package depot.optimizer.solve;

import depot.optimizer.mip.Engine;
import depot.optimizer.mip.Expr;
import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.DecisionReader;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.problem.QuantityPrices;
import depot.optimizer.problem.SharedLimit;
import depot.optimizer.problem.SharedLimit.Kind;
import depot.optimizer.scenario.SolveSettings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** A whole fleet as one model: every depot with all of its days, and the limits that they share. For small fleets. */
public final class WholeFleet {

    /** More pieces of an item than a depot can have of any. */
    private static final double MOST_PIECES = 9999;

    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final MipModel model;
    private final QuantityRows quantities;
    private final List<MasterProblem> masters = new ArrayList<>();

    /**
     * Builds the model. Names begin with their depot's key.
     *
     * @param terms for each depot one for each day of each phase
     */
    public WholeFleet(
            String name,
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            QuantityPrices prices,
            List<List<DayTerms>> terms) {
        this.rollouts = rollouts;
        this.limits = limits;
        model = new MipModel(name);
        quantities = new QuantityRows(model, prices);
        for (int d = 0; d < rollouts.size(); d++) {
            DepotRollout rollout = rollouts.get(d);
            model.scope(rollout.depot().id() + ":");
            TreeSet<Integer> days = new TreeSet<>();
            for (int day = 0; day < rollout.days().size(); day++) {
                days.add(day);
            }
            masters.add(new MasterProblem(model, rollout, days, List.of(), terms.get(d), Set.of()));
        }
        model.scope("");
        addLimits();
    }

    /** Terms for days as they are. */
    public static List<DayTerms> terms(DepotRollout rollout, List<Tightening> tightenings) {
        ShortagePolicy policy = rollout.first().shortageForbidden() ? ShortagePolicy.REFUSE : ShortagePolicy.ALLOW;
        return tightenings.stream().map(t -> new DayTerms(t, policy)).toList();
    }

    /** Terms for days as they are. */
    public static List<DayTerms> terms(DepotRollout rollout) {
        return terms(rollout, Collections.nCopies(rollout.days().size(), Tightening.NONE));
    }

    private void addLimits() {
        Map<SharedLimit, Expr> uses = new LinkedHashMap<>();
        for (SharedLimit limit : limits) {
            Expr use = new Expr();
            for (int d = 0; d < masters.size(); d++) {
                if (rollouts.get(d).limits().contains(limit)) {
                    use.add(1, masters.get(d).use(limit));
                }
            }
            uses.put(limit, use);
        }
        limits.stream()
                .filter(limit -> limit.kind() == Kind.QUANTITY)
                .forEach(limit -> quantities.add(limit, MOST_PIECES * masters.size(), uses));
        uses.forEach((limit, use) -> {
            if (limit.equation()) {
                model.equal(limit.name(), use, limit.most());
            } else {
                model.atMost(limit.name(), use, limit.most());
            }
        });
    }

    /** The model, to be written. */
    public MipModel model() {
        return model;
    }

    /**
     * A plan for every depot, and what the fleet pays beside them.
     *
     * @param bound no plan of the fleet costs less
     */
    public record Solution(List<RolloutPlan> plans, List<FleetCost> fleetCosts, double bound) {

        /** What all of it costs. */
        public double cost() {
            return plans.stream().mapToDouble(RolloutPlan::cost).sum()
                    + fleetCosts.stream().mapToDouble(FleetCost::presentCost).sum();
        }
    }

    /**
     * Solves the model.
     *
     * @throws NoPlanException when there is no plan, or none is found within the limits
     */
    public Solution solve(SolveSettings settings) {
        Outcome outcome = Engine.BRANCH_AND_CUT.solve(
                model,
                new Limits(settings.relativeGap(), settings.nodeLimit(), settings.timeLimitSeconds(), settings.seed()));
        if (!outcome.hasPoint()) {
            throw new NoPlanException("the fleet as one model has no plan within the limits (" + outcome.stop() + ")");
        }
        SolveStop stop = new SolveStop(
                outcome.stop() == Outcome.Stop.GAP_REACHED ? "gap reached" : "node or time limit",
                Certificate.of(outcome.objective(), outcome.bound(), settings.relativeGap()),
                1,
                0,
                rollouts.get(0).days().size(),
                rollouts.get(0).days().size(),
                model.variableCount(),
                model.rowCount(),
                outcome.nodes());
        List<RolloutPlan> plans = new ArrayList<>();
        for (int d = 0; d < rollouts.size(); d++) {
            plans.add(plan(d, outcome, stop));
        }
        return new Solution(List.copyOf(plans), quantities.costs(outcome), outcome.bound());
    }

    private RolloutPlan plan(int d, Outcome outcome, SolveStop stop) {
        DepotRollout rollout = rollouts.get(d);
        MasterProblem master = masters.get(d);
        List<DayDecision> days = new ArrayList<>();
        for (int day = 0; day < rollout.days().size(); day++) {
            DaySolution solution = master.bindingSolution(day, outcome);
            days.add(new DecisionReader(rollout.problemOf(rollout.days().get(day)), outcome).day(solution.vars()));
        }
        return new RolloutAssembler(rollout).assemble(master.capacityValues(outcome), days, stop);
    }
}
