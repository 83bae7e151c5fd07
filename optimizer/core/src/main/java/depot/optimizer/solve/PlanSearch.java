package depot.optimizer.solve;

import depot.optimizer.mip.Limits;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DecisionReader;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Looks for plans in whole numbers at given purchases and just above them, and keeps the cheapest.
 *
 * <p>With the purchases fixed the days are apart, and each is planned by itself. Days that cost much more than they were taken to cost are put into a
 * small master together, with nothing less and little more bought; more never harms the other days. Proves nothing.
 */
final class PlanSearch {

    /**
     * Most repairs of one point while there is no plan at all; after that one finds as good plans as several. Phases that are looked at one by one have no
     * other effort made for them, and always have as many.
     */
    private static final int MOST_REPAIRS = 5;

    /** Share of the gap asked for by which a single day may be misjudged before it is repaired. */
    private static final double TOLERATED = 0.2;

    /** Shares of the gap asked for that may stay open in a repair, and in a single day. */
    private static final double REPAIR_SHARE = 0.5;

    private static final double DAY_SHARE = 0.2;

    /** Nodes for a single day. */
    private static final long DAY_NODES = 2_000;

    /** Nodes for a repair, and the same times its variables: one of twenty days would take minutes. */
    private static final long REPAIR_NODES = 150;

    private static final long REPAIR_WORK = 500_000;

    /** Most days that join a repair at a time, worst first. */
    private static final int MOST_JOINING = 10;

    private final DepotRollout rollout;
    private final RolloutAssembler assembler;
    private final SharedPrices prices;
    private final List<DayProblem> days;
    private final Function<SortedSet<Integer>, MasterProblem> masters;
    private final boolean byPhase;
    private RolloutPlan best;
    private double bestCost = Double.POSITIVE_INFINITY;
    private double[] bestValues = {};
    private long nodes;

    /**
     * @param prices of shared limits, which plans pay beside their own cost
     * @param days one for each day of each phase
     * @param byPhase whether repairs are made phase by phase
     * @param masters makes the master with some days in full and the cuts so far
     */
    PlanSearch(
            DepotRollout rollout,
            SharedPrices prices,
            List<DayProblem> days,
            boolean byPhase,
            Function<SortedSet<Integer>, MasterProblem> masters) {
        this.byPhase = byPhase;
        this.rollout = rollout;
        assembler = new RolloutAssembler(rollout);
        this.prices = prices;
        this.days = days;
        this.masters = masters;
    }

    /**
     * Searches at the purchases of a master's point; returns by how much it misjudged each day there, worst first.
     *
     * @param planned days that the point itself plans in whole numbers
     */
    List<Miss> around(MasterPoint point, SortedSet<Integer> planned, SolveStop stop) {
        List<Miss> first = evaluate(point.master(), point.outcome(), planned, stop);
        List<Miss> misses = first;
        double[] values = point.master().capacityValues(point.outcome());
        SortedSet<Integer> repaired = new TreeSet<>();
        for (int repair = 0; repair < (best == null || byPhase ? MOST_REPAIRS : 1); repair++) {
            double tolerated =
                    TOLERATED * gap() * Math.min(bestCost, point.outcome().objective());
            List<Integer> joining = misses.stream()
                    .filter(miss -> miss.amount() > tolerated && !repaired.contains(miss.day()))
                    .limit(MOST_JOINING)
                    .map(Miss::day)
                    .toList();
            if (!repaired.addAll(joining)) {
                break;
            }
            MasterProblem near = masters.apply(repaired);
            Limits work = limits(REPAIR_SHARE * gap(), 0, repairNodes(near));
            Outcome outcome = byPhase ? near.solveJustAboveByPhase(values, work) : near.solveJustAbove(values, work);
            nodes += outcome.nodes();
            if (!outcome.hasPoint()) {
                break;
            }
            misses = evaluate(near, outcome, repaired, stop);
        }
        return first;
    }

    private static long repairNodes(MasterProblem master) {
        return Math.min(REPAIR_NODES, master.nodes(REPAIR_WORK));
    }

    private List<Miss> evaluate(MasterProblem master, Outcome point, SortedSet<Integer> planned, SolveStop stop) {
        double[] values = master.capacityValues(point);
        List<DayDecision> decisions = new ArrayList<>();
        List<Miss> misses = new ArrayList<>();
        double total = Math.min(bestCost, point.objective());
        for (int d = 0; d < days.size(); d++) {
            List<Double> charge = master.cyclePrices(d, point).get(0);
            DepotProblem problem = days.get(d).problem();
            Optional<DaySolution> found = planned.contains(d)
                    ? Optional.of(master.bindingSolution(d, point))
                    : solve(d, values, charge, total);
            found.ifPresent(
                    solution -> decisions.add(new DecisionReader(problem, solution.outcome()).day(solution.vars())));
            misses.add(new Miss(d, miss(found, master.judged(d, point, charge), charge)));
        }
        misses.sort(Miss.WORST_FIRST);
        if (decisions.size() == days.size()) {
            keep(values, decisions, stop);
        }
        return misses;
    }

    /** A day may leave its share of what all days together may leave of the total: to settle each to a share of its own small cost takes long. */
    private Optional<DaySolution> solve(int day, double[] values, List<Double> charges, double total) {
        double allowed = DAY_SHARE * gap() * Math.abs(total) / days.size();
        Optional<DaySolution> found =
                days.get(day).solve(values, charges, limits(DAY_SHARE * gap(), allowed, DAY_NODES));
        nodes += found.map(solution -> solution.outcome().nodes()).orElse(0L);
        return found;
    }

    private static double miss(Optional<DaySolution> found, double judged, List<Double> cyclePrices) {
        return found.map(solution -> Math.max(0, solution.costWithCharges(cyclePrices) - judged))
                .orElse(Double.POSITIVE_INFINITY);
    }

    private void keep(double[] values, List<DayDecision> decisions, SolveStop stop) {
        RolloutPlan plan = assembler.assemble(values, decisions, stop);
        double cost = plan.cost() + prices.of(plan.use());
        if (cost < bestCost) {
            best = plan;
            bestCost = cost;
            bestValues = values;
        }
    }

    private double gap() {
        return rollout.settings().relativeGap();
    }

    private Limits limits(double relativeGap, double absoluteGap, long nodeLimit) {
        return new Limits(
                relativeGap,
                absoluteGap,
                Math.min(nodeLimit, rollout.settings().nodeLimit()),
                rollout.settings().timeLimitSeconds(),
                rollout.settings().seed());
    }

    /** The cheapest plan so far. */
    Optional<RolloutPlan> best() {
        return Optional.ofNullable(best);
    }

    /** What the cheapest plan costs at the prices of shared limits, infinite while there is none. */
    double bestCost() {
        return bestCost;
    }

    /** What the cheapest plan buys, in the order of the master. */
    double[] bestValues() {
        return bestValues;
    }

    long nodes() {
        return nodes;
    }
}
