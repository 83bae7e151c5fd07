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
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** A small fleet, or a few depots of a bigger one, as one model: every depot with all of its days, and the limits that they share. */
public final class WholeFleet {

    /** More pieces of an item than a depot can have of any. */
    private static final double MOST_PIECES = 9999;

    private final List<DepotRollout> rollouts;
    private final List<SharedLimit> limits;
    private final Map<SharedLimit, Double> elsewhere;
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
        this(name, rollouts, limits, prices, terms, Map.of());
    }

    /**
     * A model of some of a fleet's depots, with the plans of the others given: what they buy counts towards quantity prices, and what they use of the
     * limits is taken. What the fleet pays beside its depots is part of the model's cost.
     *
     * @param terms for each depot one for each day of each phase
     * @param elsewhere what the other depots use of the limits
     */
    public WholeFleet(
            String name,
            List<DepotRollout> rollouts,
            List<SharedLimit> limits,
            QuantityPrices prices,
            List<List<DayTerms>> terms,
            Map<SharedLimit, Double> elsewhere) {
        this.rollouts = rollouts;
        this.limits = limits;
        this.elsewhere = Collections.unmodifiableMap(new LinkedHashMap<>(elsewhere));
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
                .forEach(limit -> quantities.add(limit, MOST_PIECES * masters.size() - of(limit), uses));
        uses.forEach(this::addLimit);
    }

    private double of(SharedLimit limit) {
        return elsewhere.getOrDefault(limit, 0.0);
    }

    private void addLimit(SharedLimit limit, Expr use) {
        if (use.isEmpty() && elsewhere.containsKey(limit)) {
            return;
        }
        if (limit.equation()) {
            model.equal(limit.name(), use, limit.most() - of(limit));
        } else {
            model.atMost(limit.name(), use, limit.most() - of(limit));
        }
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
        Outcome outcome = Engine.TRIED_BRANCH_AND_CUT.solve(
                model,
                new Limits(settings.relativeGap(), settings.nodeLimit(), settings.timeLimitSeconds(), settings.seed()));
        if (!outcome.hasPoint()) {
            throw new NoPlanException("the fleet as one model has no plan within the limits (" + outcome.stop() + ")");
        }
        return solution(outcome, settings.relativeGap());
    }

    /**
     * What a search for plans that cost no more than an amount came to.
     *
     * @param solution the best one found
     * @param bound no plan costs less, as far as is known
     */
    public record Below(Optional<Solution> solution, double bound) {}

    /**
     * Looks for plans that cost no more than an amount.
     *
     * @param engine one that proves much with few nodes, or one that finds points quickly
     */
    public Below solveBelow(double amount, Engine engine, Limits work) {
        Outcome outcome = engine.solve(model.costingAtMost(amount), work);
        if (!outcome.hasPoint()) {
            boolean nothing = outcome.stop() == Outcome.Stop.INFEASIBLE;
            return new Below(Optional.empty(), nothing ? amount : Double.NEGATIVE_INFINITY);
        }
        return new Below(Optional.of(solution(outcome, work.relativeGap())), Math.min(amount, outcome.bound()));
    }

    private Solution solution(Outcome outcome, double gap) {
        SolveStop stop = new SolveStop(
                outcome.stop() == Outcome.Stop.GAP_REACHED ? "gap reached" : "node or time limit",
                Certificate.of(outcome.objective(), outcome.bound(), gap),
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
