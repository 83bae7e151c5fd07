package depot.optimizer.rerun;

import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.PlanSettings;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import depot.optimizer.sweep.change.PlanBasis;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which depots of a scenario are as they were in an earlier run: the problem that their plan solves is the same. */
final class Comparison {

    private final EarlierRun earlier;
    private final SolveSettings asked;
    private final Map<String, DepotProblem> before;
    private final Map<String, DepotProblem> after;

    Comparison(EarlierRun earlier, Scenario scenario) {
        this.earlier = earlier;
        asked = scenario.solve();
        SolveSettings own = earlier.scenario().solve();
        // How hard the solver looks is no part of the problem; how handovers are rounded is.
        SolveSettings alike = new SolveSettings(
                asked.relativeGap(),
                asked.nodeLimit(),
                asked.timeLimitSeconds(),
                asked.threads(),
                asked.seed(),
                own.handoverMinutes());
        before = problems(earlier.scenario().withSolve(alike));
        after = problems(scenario);
    }

    private static Map<String, DepotProblem> problems(Scenario scenario) {
        Scenario basis = PlanBasis.of(scenario);
        DepotProblems problems = new DepotProblems(basis);
        Map<String, DepotProblem> byDepot = new TreeMap<>();
        for (Depot depot : basis.depots()) {
            byDepot.put(depot.id(), problems.of(depot));
        }
        return byDepot;
    }

    /**
     * In what a depot differs from what it was, in plain words; empty: its earlier plan stays.
     *
     * @param plan of the earlier run
     */
    List<String> reasons(DepotPlan plan) {
        String depot = plan.depot();
        List<Difference> differences = Difference.between(before.get(depot), after.get(depot));
        if (differences.isEmpty() && !goodEnough(plan)) {
            return List.of(Difference.SETTINGS.words());
        }
        return differences.stream().map(Difference::words).toList();
    }

    /** Whether the plan is what is asked for now, or the answer to the same question. */
    private boolean goodEnough(DepotPlan plan) {
        PlanSettings then = earlier.plan().settings();
        boolean same = then.relativeGap() == asked.relativeGap()
                && then.nodeLimit() == asked.nodeLimit()
                && then.seed() == asked.seed();
        return same || plan.stop().certificate().gap() <= asked.relativeGap();
    }
}
