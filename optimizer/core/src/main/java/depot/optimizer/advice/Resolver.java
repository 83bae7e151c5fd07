package depot.optimizer.advice;

import depot.optimizer.advice.Answer.Ending;
import depot.optimizer.fleet.DepotResult;
import depot.optimizer.fleet.VariedDepot;
import depot.optimizer.plan.Certificate;
import depot.optimizer.problem.DepotProblem;
import depot.optimizer.problem.DepotProblems;
import depot.optimizer.problem.PieceLimit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.BiFunction;

/** Solves one depot again and again with something changed, each different problem once. Called from several threads. */
final class Resolver implements Resolving {

    private final Scenario scenario;
    private final Depot depot;
    private final DepotProblem problem;
    private final ReplayedPlan base;
    private final Map<DepotProblem, FutureTask<DepotResult>> solved = new ConcurrentHashMap<>();

    /**
     * @param base the plan asked about
     */
    Resolver(Scenario scenario, Depot depot, ReplayedPlan base) {
        this.scenario = scenario;
        this.depot = depot;
        this.base = base;
        problem = new DepotProblems(scenario).of(depot);
    }

    @Override
    public ReplayedPlan base() {
        return base;
    }

    @Override
    public List<DepotProblem> problems() {
        return List.of(problem);
    }

    @Override
    public Scenario scenario() {
        return scenario;
    }

    @Override
    public Answer harder(List<List<PieceLimit>> limits) {
        return answer(scenario, problem.with(limits.get(0)), Difference::harder);
    }

    @Override
    public Answer easier(Scenario changed) {
        Depot same = changed.depots().stream()
                .filter(each -> each.id().equals(depot.id()))
                .findFirst()
                .orElseThrow();
        DepotProblem easier = new DepotProblems(changed).of(same);
        if (easier.equals(problem)) {
            return new Answer(
                    Answer.ending(base, problem.shortageForbidden()),
                    Optional.of(base),
                    Optional.of(Difference.none()),
                    "");
        }
        return answer(changed, easier, Difference::easier);
    }

    private Answer answer(
            Scenario changed, DepotProblem asked, BiFunction<Certificate, Certificate, Difference> difference) {
        try {
            DepotResult result = solve(changed, asked);
            ReplayedPlan found = new ReplayedPlan(result.plan(), result.replay());
            Ending ending = Answer.ending(found, problem.shortageForbidden());
            boolean comparable = ending == Ending.MET || ending == Ending.SHORT;
            return new Answer(
                    ending,
                    Optional.of(found),
                    comparable
                            ? Optional.of(difference.apply(base.certificate(), found.certificate()))
                            : Optional.empty(),
                    Answer.trouble(found));
        } catch (NoPlanException e) {
            return new Answer(Ending.NO_PLAN, Optional.empty(), Optional.empty(), e.getMessage());
        }
    }

    private DepotResult solve(Scenario changed, DepotProblem asked) {
        FutureTask<DepotResult> task = new FutureTask<>(() -> VariedDepot.plan(changed, asked));
        FutureTask<DepotResult> first = solved.putIfAbsent(asked, task);
        if (first == null) {
            task.run();
        }
        return await(first == null ? task : first);
    }

    private static DepotResult await(FutureTask<DepotResult> task) {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new NoPlanException("interrupted before every question had an answer");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
