package depot.optimizer.fleet;

import depot.optimizer.fleet.AnswerStore.Answer;
import depot.optimizer.model.Tightening;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotRollout;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import depot.optimizer.solve.Effort;
import depot.optimizer.solve.MeasuredPlan;
import depot.optimizer.solve.RolloutPlan;
import depot.optimizer.solve.SharedPrices;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A depot's plans of all phases together with their replays. When the replay finds a load behind a unit late, or packs on the way not empty, that day
 * is given less room and the depot is solved again.
 *
 * @param rollout the plans, with the energy that the replay measured
 * @param replays one for each phase
 * @param bound no plans of the depot cost less, prices of shared limits included
 */
record ProvenDepot(RolloutPlan rollout, List<DepotReplay> replays, double bound) {

    static final int MOST_TIGHTENINGS = 8;

    /** What was kept under a question, or else what is worked out now and kept. */
    static ProvenDepot kept(
            AnswerStore answers,
            String question,
            Scenario scenario,
            DepotRollout rollout,
            Supplier<ProvenDepot> workedOut) {
        Optional<Answer> known = answers.find(question);
        if (known.isPresent()) {
            RolloutPlan plan = RolloutPlan.of(rollout, known.get().phases());
            return new ProvenDepot(
                    plan,
                    FleetReplay.runPhases(scenario, plan.phases()),
                    known.get().bound());
        }
        ProvenDepot proven = workedOut.get();
        answers.keep(question, new Answer(proven.rollout.phases(), proven.bound));
        return proven;
    }

    /**
     * Replays what a solver has found. Where days are late, more is paid for, so that they are not; if that costs more than the gap allows, the days are
     * tightened and the depot is solved again, which may find something cheaper.
     *
     * @param prices of shared limits, which the solver has
     * @param found the best plan of the solver
     */
    static ProvenDepot replayed(
            Scenario scenario, DepotRollout rollout, SharedPrices prices, DepotSolver first, RolloutPlan found) {
        List<Tightening> tightenings =
                new ArrayList<>(Collections.nCopies(rollout.days().size(), Tightening.NONE));
        // Tightening takes plans away, so that only the bound of the problem as it is holds for every plan.
        double bound = first.bound();
        Attempt attempt = attempt(scenario, rollout, found, tightenings);
        if (!attempt.tightened()) {
            return attempt.proven().boundedBy(bound);
        }
        ProvenDepot best = inTime(scenario, rollout, found);
        if (best.closed(prices, bound, scenario)) {
            return best.boundedBy(bound);
        }
        DepotSolver solver = first;
        for (int tightened = 1; ; tightened++) {
            solver = solver.tightened(List.copyOf(tightenings));
            RolloutPlan plan = solver.solveRollout(Effort.most(rollout));
            attempt = attempt(scenario, rollout, plan, tightenings);
            if (!attempt.tightened() || tightened == MOST_TIGHTENINGS) {
                ProvenDepot last = attempt.tightened() ? inTime(scenario, rollout, plan) : attempt.proven();
                return last.better(best, prices).boundedBy(bound);
            }
        }
    }

    private boolean closed(SharedPrices prices, double least, Scenario scenario) {
        double cost = cost(prices);
        return replayed() && cost - least <= scenario.solve().relativeGap() * Math.abs(cost);
    }

    /** What it costs, at prices of shared limits. */
    double cost(SharedPrices prices) {
        return rollout.cost() + prices.of(rollout.use());
    }

    /** The one that is proven, or else the cheaper one. */
    ProvenDepot better(ProvenDepot other, SharedPrices prices) {
        if (replayed() != other.replayed()) {
            return replayed() ? this : other;
        }
        return cost(prices) < other.cost(prices) ? this : other;
    }

    /**
     * A plan with its replay.
     *
     * @param tightened whether days were found that more room may cure; they were tightened
     */
    record Attempt(ProvenDepot proven, boolean tightened) {}

    /**
     * Replays a plan with the best schedules found for it, and tightens the days that are late all the same.
     *
     * @param tightenings one for each day of each phase; changed
     */
    static Attempt attempt(Scenario scenario, DepotRollout rollout, RolloutPlan found, List<Tightening> tightenings) {
        RolloutPlan plan = searched(scenario, rollout, found, MeasuredSearch::improved);
        List<DepotReplay> replays = FleetReplay.runPhases(scenario, shared(plan.phases()));
        boolean late =
                replays.stream().flatMap(replay -> replay.failedDays().stream()).anyMatch(LateDays::curable);
        int from = 0;
        for (int p = 0; p < replays.size() && late; p++) {
            DepotProblem problem = rollout.phases().get(p);
            LateDays.tighten(tightenings, from, problem, plan.phases().get(p), replays.get(p));
            from += problem.days().size();
        }
        return new Attempt(measured(scenario, rollout, plan, replays, Double.NEGATIVE_INFINITY), late);
    }

    /** A plan that no tightening has brought to be in time, replayed with schedules that may cost more than the model took them to. */
    static ProvenDepot inTime(Scenario scenario, DepotRollout rollout, RolloutPlan found) {
        RolloutPlan plan = searched(scenario, rollout, found, MeasuredSearch::inTime);
        List<DepotReplay> replays = FleetReplay.runPhases(scenario, shared(plan.phases()));
        return measured(scenario, rollout, plan, replays, Double.NEGATIVE_INFINITY);
    }

    private static RolloutPlan searched(
            Scenario scenario, DepotRollout rollout, RolloutPlan plan, Function<MeasuredSearch, DepotPlan> how) {
        if (plan.phases().stream().allMatch(phase -> phase.units().isEmpty())) {
            return plan;
        }
        List<DepotPlan> plans = new ArrayList<>();
        for (int p = 0; p < plan.phases().size(); p++) {
            Optional<DepotPlan> before = p == 0 ? Optional.empty() : Optional.of(plans.get(p - 1));
            DepotProblem problem = rollout.phases().get(p);
            DepotPlan best = how.apply(new MeasuredSearch(
                    scenario, problem, p + 1, before, plan.phases().get(p)));
            plans.add(MeasuredPlan.of(problem, p + 1, best, before, Map.of()));
        }
        return RolloutPlan.of(rollout, plans);
    }

    /** The plan of the first phase. */
    DepotPlan plan() {
        return rollout.phases().get(0);
    }

    /** The replay of the first phase. */
    DepotReplay replay() {
        return replays.get(0);
    }

    /** Whether every phase is proven. */
    boolean replayed() {
        return replays.stream().allMatch(DepotReplay::proven);
    }

    /** Each phase's certificate says what the phase costs, so that its replay can tell. */
    private static List<DepotPlan> shared(List<DepotPlan> plans) {
        return plans.stream()
                .map(plan -> plan.withStop(plan.stop().withCertificate(Certificate.of(lines(plan), 0, 0))))
                .toList();
    }

    private static double lines(DepotPlan plan) {
        return plan.costs().stream().mapToDouble(CostLine::presentCost).sum();
    }

    /** For a depot that shares nothing: with each phase's share of its cost and bound. */
    ProvenDepot certified(Scenario scenario) {
        double cost = rollout.cost();
        return certified(cost, Math.min(cost, bound), scenario.solve().relativeGap());
    }

    /** With each phase's share of a cost and its bound. */
    ProvenDepot certified(double cost, double bound, double gap) {
        double share = cost == 0 ? 1 : bound / cost;
        List<DepotPlan> plans = rollout.phases().stream()
                .map(plan -> plan.withStop(reasoned(plan, Certificate.of(lines(plan), lines(plan) * share, gap))))
                .toList();
        RolloutPlan certified = new RolloutPlan(plans, rollout.cost(), rollout.use());
        return new ProvenDepot(certified, replays, bound);
    }

    private static SolveStop reasoned(DepotPlan plan, Certificate certificate) {
        SolveStop stop = plan.stop().withCertificate(certificate);
        if (certificate.proven()) {
            return stop.withReason("gap reached");
        }
        return stop.tightenings() == 0 ? stop : stop.withReason("days tightened after the replay");
    }

    /** The same where the search ended before the depot's own gap was reached, since the fleet's did not need it. */
    ProvenDepot leftOpen() {
        List<DepotPlan> plans = rollout.phases().stream()
                .map(plan -> plan.withStop(plan.stop().withReason("the fleet's gap needed no more")))
                .toList();
        return new ProvenDepot(new RolloutPlan(plans, rollout.cost(), rollout.use()), replays, bound);
    }

    /** The same plans and replays with a bound that may be better. */
    ProvenDepot boundedBy(double other) {
        return new ProvenDepot(rollout, replays, Math.max(bound, other));
    }

    /** With the energy that the replay measured behind units, which is what will be paid for, and replayed once more. */
    private static ProvenDepot measured(
            Scenario scenario, DepotRollout rollout, RolloutPlan plan, List<DepotReplay> replays, double bound) {
        if (plan.phases().stream().allMatch(phase -> phase.units().isEmpty())
                || !replays.stream().allMatch(DepotReplay::proven)) {
            return new ProvenDepot(RolloutPlan.of(rollout, shared(plan.phases())), replays, bound);
        }
        List<DepotPlan> plans = new ArrayList<>();
        for (int p = 0; p < replays.size(); p++) {
            Optional<DepotPlan> before = p == 0 ? Optional.empty() : Optional.of(plans.get(p - 1));
            DepotPlan phase = plan.phases().get(p);
            plans.add(MeasuredPlan.of(
                    rollout.phases().get(p), p + 1, phase, before, measuredEnergy(phase, replays.get(p))));
        }
        List<DepotPlan> shared = shared(plans);
        return new ProvenDepot(RolloutPlan.of(rollout, shared), FleetReplay.runPhases(scenario, shared), bound);
    }

    static Map<Integer, List<EnergyUse>> measuredEnergy(DepotPlan plan, DepotReplay replay) {
        Map<Integer, List<EnergyUse>> energy = new TreeMap<>();
        for (int d = 0; d < plan.days().size(); d++) {
            int day = d;
            energy.put(
                    d,
                    MeasuredDays.mean(replay.days().stream()
                            .filter(run -> run.day() == day)
                            .toList()));
        }
        return energy;
    }

    /** A plan of a single phase with the energy that the replay measured, and replayed once more. */
    static DepotResult asMeasured(Scenario scenario, DepotProblem problem, DepotPlan plan, DepotReplay replay) {
        DepotPlan measured = MeasuredPlan.of(problem, plan, measuredEnergy(plan, replay));
        return new DepotResult(measured, FleetReplay.runDepot(scenario, measured));
    }
}
