package depot.optimizer.solve;

import depot.optimizer.mip.Limits;
import depot.optimizer.mip.MipModel;
import depot.optimizer.mip.Outcome;
import depot.optimizer.model.CapacityDecision;
import depot.optimizer.model.DayDecision;
import depot.optimizer.model.DayTerms;
import depot.optimizer.model.DecisionReader;
import depot.optimizer.model.DepotModel;
import depot.optimizer.model.ShortagePolicy;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DayKind;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.Trip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Solves one depot.
 *
 * <p>The master holds what is bought and the binding days in full; every other kind of day stands in it as a cost held up by cuts. After each
 * master the other days are solved with its purchases fixed. When the sum is within the gap of the master's bound the plan is done; otherwise the
 * day that the master misjudged most joins the binding days. The master is a relaxation throughout, so its bound stays valid.
 */
public final class DepotSolver {

    /** Share of the gap that the master may leave; the rest is for the days outside it. */
    private static final double MASTER_SHARE = 0.6;

    /** Share of the nodes that may be spent on a first master with fractions of loads, and on later ones. */
    private static final double FIRST_SHARE = 0.125;

    private static final double EXPLORING_SHARE = 0.5;

    /** Nodes for a plan near a point with fractions of loads. */
    private static final long REPAIR_NODES = 150;

    /** Days that may join the binding ones after one master. */
    private static final int MOST_NEW_DAYS = 2;

    /** Most passes over the linear relaxation before the first whole-number master. */
    private static final int RELAXED_PASSES = 12;

    /** A pass that lifts the relaxation by less than this share is the last. */
    private static final double RELAXED_STEP = 0.0005;

    private final DepotProblem problem;
    private final List<Tightening> tightenings;
    private final int tightened;
    private final CutPool cuts = new CutPool();
    private final TreeSet<Integer> binding = new TreeSet<>();
    private final List<Double> noCyclePrice;
    private final List<Double> fullCyclePrice;
    private ShortagePolicy shortage;
    private long nodes;
    private double bound = Double.NEGATIVE_INFINITY;
    private DepotPlan best;
    private boolean exploredInFull;
    /** The first day has turned out to be the only one that matters. */
    private boolean settled;

    private double[] bestValues = {};
    private double[] start = {};
    private double bestCost = Double.POSITIVE_INFINITY;

    /** For a problem as it is. */
    public DepotSolver(DepotProblem problem) {
        this(problem, Collections.nCopies(problem.days().size(), Tightening.NONE), 0);
    }

    private DepotSolver(DepotProblem problem, List<Tightening> tightenings, int tightened) {
        this.problem = problem;
        this.tightenings = tightenings;
        this.tightened = tightened;
        shortage = problem.shortageForbidden() ? ShortagePolicy.REFUSE : ShortagePolicy.ALLOW;
        noCyclePrice = Collections.nCopies(problem.packTypes().size(), 0.0);
        List<Double> full = new ArrayList<>();
        for (int p = 0; p < problem.packTypes().size(); p++) {
            full.add(DepotModel.costPerCycle(problem, p));
        }
        fullCyclePrice = List.copyOf(full);
    }

    /**
     * For the same problem after its replay has failed. What this solver has learnt is kept: cuts stay valid, since a tighter day costs no less.
     *
     * @param tighter one for each kind of day
     */
    public DepotSolver tightened(List<Tightening> tighter) {
        DepotSolver next = new DepotSolver(problem, tighter, tightened + 1);
        next.cuts.addAll(cuts);
        next.binding.addAll(binding);
        next.shortage = shortage;
        next.bound = bound;
        next.start = bestValues;
        return next;
    }

    /**
     * The depot's plan with its bound.
     *
     * @throws NoPlanException when no plan is found within the limits
     */
    public DepotPlan solve() {
        Stage stage = start.length > 0 ? Stage.REPAIRING : Stage.EXPLORING;
        if (stage == Stage.EXPLORING) {
            if (!problem.days().isEmpty()) {
                binding.add(heaviestDay());
            }
            relaxedPasses();
        }
        for (int rounds = 1; ; rounds++) {
            List<Miss> misses = round(rounds, stage);
            if (Certificate.of(bestCost, bound, gap()).proven()) {
                return best;
            }
            double allowed = gap() * bestCost;
            if (misses.stream().mapToDouble(Miss::amount).sum() > (1 - MASTER_SHARE) * allowed) {
                misses.stream()
                        .limit(MOST_NEW_DAYS)
                        .filter(miss -> miss.equals(misses.get(0)) || miss.amount() > allowed)
                        .forEach(miss -> binding.add(miss.day()));
            } else if (stage == Stage.EXPLORING && exploredInFull) {
                stage = Stage.EXACT;
            } else if (stage == Stage.EXPLORING && binding.size() == 1 && !settled) {
                settled = true;
            } else {
                return best;
            }
        }
    }

    /** Collects cuts at the optima of the master's linear relaxation, until they hardly lift it. */
    private void relaxedPasses() {
        double before = 0;
        for (int pass = 0;
                pass < RELAXED_PASSES && binding.size() < problem.days().size();
                pass++) {
            MasterProblem master = master();
            Outcome relaxed = master.relaxed(limits(0));
            if (relaxed.stop() == Outcome.Stop.INFEASIBLE && shortage == ShortagePolicy.REFUSE) {
                shortage = ShortagePolicy.ALLOW;
                master = master();
                relaxed = master.relaxed(limits(0));
            }
            if (!relaxed.hasPoint() || relaxed.objective() < before * (1 + RELAXED_STEP)) {
                return;
            }
            before = relaxed.objective();
            addCuts(master.capacityValues(relaxed));
        }
    }

    private double gap() {
        return problem.settings().relativeGap();
    }

    private Limits limits(double relativeGap) {
        return limits(relativeGap, problem.settings().nodeLimit());
    }

    private Limits limits(double relativeGap, long nodeLimit) {
        return new Limits(
                relativeGap,
                Math.min(nodeLimit, problem.settings().nodeLimit()),
                problem.settings().timeLimitSeconds(),
                problem.settings().seed());
    }

    private MasterProblem master() {
        List<DayTerms> terms =
                tightenings.stream().map(t -> new DayTerms(t, shortage)).toList();
        return new MasterProblem(new MipModel(problem.depot().id()), problem, binding, cuts.all(), terms, Set.of());
    }

    /** A day outside the master that costs more than its cuts made the master believe. */
    private record Miss(int day, double amount) {}

    /** Solves the master and the days outside it; returns the days that it misjudged, worst first. */
    private List<Miss> round(int number, Stage stage) {
        MasterProblem master = master();
        Outcome outcome = solve(master, stage);
        if (stage == Stage.REPAIRING && !outcome.hasPoint()) {
            return round(number, Stage.EXACT);
        }
        if (outcome.stop() == Outcome.Stop.INFEASIBLE && shortage == ShortagePolicy.REFUSE) {
            // No purchases meet every day: plan for the least shortage instead, and let the caller say so.
            shortage = ShortagePolicy.ALLOW;
            return round(number, stage);
        }
        if (!outcome.hasPoint()) {
            throw new NoPlanException("depot " + problem.depot().id() + ": no plan within the limits (" + outcome.stop()
                    + "); raise the node or time limit");
        }
        nodes += outcome.nodes();
        if (stage != Stage.REPAIRING) {
            bound = Math.max(bound, outcome.bound());
        }
        // Where fractions of loads already run into the limit, whole numbers would do so all the more.
        exploredInFull = outcome.stop() == Outcome.Stop.GAP_REACHED;
        Optional<Outcome> near = stage == Stage.EXPLORING ? near(master, outcome) : Optional.empty();
        Outcome found = near.orElse(outcome);
        boolean whole = stage != Stage.EXPLORING || near.isPresent();
        CapacityDecision capacity = new DecisionReader(problem, found).capacity(master.capacity());
        double[] values = master.capacityValues(found);
        List<DayDecision> days = new ArrayList<>();
        List<Miss> misses = new ArrayList<>();
        for (int d = 0; d < problem.days().size(); d++) {
            DaySolution solution;
            if (binding.contains(d) && whole) {
                solution = master.bindingSolution(d, found);
            } else {
                solution = day(d, values, fullCyclePrice).solve(limits(gap() * 0.5));
                nodes += solution.outcome().nodes();
            }
            if (!binding.contains(d)) {
                misses.add(new Miss(
                        d, Math.max(0, solution.outcome().objective() - cuts.judged(d, values, fullCyclePrice))));
            }
            days.add(new DecisionReader(problem, solution.outcome()).day(solution.vars()));
        }
        keep(number, master, outcome, new PlanAssembler(problem, capacity, days), values);
        if (!misses.isEmpty()) {
            addCuts(values);
        }
        misses.sort(Comparator.comparingDouble(Miss::amount).reversed().thenComparingInt(Miss::day));
        return misses;
    }

    private Outcome solve(MasterProblem master, Stage stage) {
        double masterGap = gap() * MASTER_SHARE;
        return switch (stage) {
            case EXPLORING -> master.solveWithFractionsOfLoads(limits(masterGap, exploringNodes()));
            case EXACT -> master.solve(limits(masterGap));
            case REPAIRING -> master.solveJustAbove(start, limits(masterGap, REPAIR_NODES));
        };
    }

    /** One day hardly ever settles what to buy, so that little is spent on it where there are others. */
    private long exploringNodes() {
        boolean first = binding.size() == 1 && problem.days().size() > 1 && !settled;
        return (long) Math.ceil(problem.settings().nodeLimit() * (first ? FIRST_SHARE : EXPLORING_SHARE));
    }

    /** A point in whole numbers near one with fractions of loads. */
    private Optional<Outcome> near(MasterProblem master, Outcome relaxed) {
        double[] values = master.capacityValues(relaxed);
        Outcome near = master.solveJustAbove(values, limits(gap() * MASTER_SHARE, REPAIR_NODES));
        nodes += near.nodes();
        return near.hasPoint() ? Optional.of(near) : Optional.empty();
    }

    private DayProblem day(int day, double[] capacityValues, List<Double> cyclePrices) {
        return new DayProblem(problem, day, tightenings.get(day), capacityValues, cyclePrices);
    }

    private void addCuts(double[] capacityValues) {
        for (int d = 0; d < problem.days().size(); d++) {
            if (!binding.contains(d)) {
                day(d, capacityValues, noCyclePrice).cut().ifPresent(cuts::add);
                day(d, capacityValues, fullCyclePrice).cut().ifPresent(cuts::add);
            }
        }
    }

    private void keep(int round, MasterProblem master, Outcome outcome, PlanAssembler assembler, double[] values) {
        DepotPlan plan = assembler.assemble(stop(round, master, outcome, 0));
        double cost = plan.costs().stream().mapToDouble(CostLine::presentCost).sum();
        if (cost < bestCost) {
            bestValues = values;
            bestCost = cost;
            best = plan;
        }
        best = best.withStop(stop(round, master, outcome, bestCost));
    }

    private SolveStop stop(int round, MasterProblem master, Outcome outcome, double cost) {
        Certificate certificate = Certificate.of(cost, Math.min(cost, bound), gap());
        String reason = certificate.proven() ? "gap reached" : "limit reached or days outside the gap";
        return new SolveStop(
                outcome.stop() == Outcome.Stop.LIMIT_REACHED && !certificate.proven() ? "node or time limit" : reason,
                certificate,
                round,
                tightened,
                problem.days().size(),
                binding.size(),
                master.model().variableCount(),
                master.model().rowCount(),
                nodes);
    }

    /** The day with the most energy to carry, measured in packs at its temperature: a good first guess at what binds. */
    private int heaviestDay() {
        int heaviest = 0;
        double most = -1;
        for (int d = 0; d < problem.days().size(); d++) {
            DayKind kind = problem.days().get(d);
            double load = 0;
            for (Trip trip : kind.trips()) {
                load += trip.needs().stream().mapToDouble(n -> n.totalWh()).sum() / kind.packCapacityFactor();
            }
            if (load > most) {
                most = load;
                heaviest = d;
            }
        }
        return heaviest;
    }
}
