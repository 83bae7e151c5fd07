package depot.optimizer.fleet;

import depot.optimizer.model.Tightening;
import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.SolveStop;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.replay.DayReplay;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.DepotSolver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A depot's plan together with its replay. When the replay finds a load behind a unit late, that day is given less room behind that unit and the
 * depot is solved again.
 */
record ProvenDepot(DepotPlan plan, DepotReplay replay) {

    /** Share of a unit's room that stays after each late day. */
    private static final double KEEP = 0.93;

    private static final int MOST_TIGHTENINGS = 8;

    static ProvenDepot solve(Scenario scenario, DepotProblem problem) {
        List<Tightening> tightenings =
                new ArrayList<>(Collections.nCopies(problem.days().size(), Tightening.NONE));
        DepotPlan first = null;
        for (int tightened = 0; ; tightened++) {
            DepotPlan plan = withFirstBound(
                    problem, new DepotSolver(problem, List.copyOf(tightenings), tightened).solve(), first);
            first = first == null ? plan : first;
            DepotReplay replay = FleetReplay.runDepot(scenario, plan);
            boolean late = replay.failedDays().stream()
                    .anyMatch(day -> !day.missingWhByCircuit().isEmpty());
            if (!late || tightened == MOST_TIGHTENINGS) {
                return new ProvenDepot(plan, replay);
            }
            for (DayReplay day : replay.failedDays()) {
                tightenings.set(day.day(), tighter(problem, tightenings.get(day.day()), day));
            }
        }
    }

    /** Tightening takes plans away, so that only the bound of the problem as it is holds for every plan. */
    private static DepotPlan withFirstBound(DepotProblem problem, DepotPlan plan, DepotPlan first) {
        if (first == null) {
            return plan;
        }
        double bound = first.stop().certificate().bound();
        Certificate certificate = Certificate.of(
                plan.stop().certificate().cost(), bound, problem.settings().relativeGap());
        SolveStop stop = plan.stop().withCertificate(certificate);
        return plan.withStop(stop);
    }

    private static Tightening tighter(DepotProblem problem, Tightening before, DayReplay day) {
        Map<Integer, Double> shares = new TreeMap<>(before.circuitShare());
        for (int k = 0; k < problem.circuits().size(); k++) {
            if (day.missingWhByCircuit()
                    .containsKey(problem.circuits().get(k).circuit().id())) {
                shares.merge(k, KEEP, (old, keep) -> old * keep);
            }
        }
        return new Tightening(Map.copyOf(shares), before.supplyShare() * KEEP);
    }
}
