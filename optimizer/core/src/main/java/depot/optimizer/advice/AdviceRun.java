package depot.optimizer.advice;

import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.advice.thumb.RulesOfThumb;
import depot.optimizer.fleet.Awaited;
import depot.optimizer.fleet.DepotResult;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.problem.SharedLimits;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import depot.optimizer.sweep.spec.Sharing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Answers what is asked about a plan, several questions side by side. Answers do not depend on the order in which they are found. */
public final class AdviceRun {

    private final ExecutorService pool;
    private final AdviceProgress progress;
    private int done;
    private int total;

    private AdviceRun(ExecutorService pool, AdviceProgress progress) {
        this.pool = pool;
        this.progress = progress;
    }

    /**
     * Answers.
     *
     * @param scenario that the plan was made for; depots are solved again with its settings, threads among them
     * @param depots ids of the depots asked about, each in the plan
     * @throws NoPlanException if it is interrupted
     */
    public static Advice of(
            Scenario scenario, Plan plan, List<String> depots, AdviceSettings settings, AdviceProgress progress) {
        ExecutorService pool = Executors.newFixedThreadPool(scenario.solve().threads());
        try {
            AdviceRun run = new AdviceRun(pool, progress);
            boolean joined = Sharing.joined(scenario);
            FleetQuestions fleet = new FleetQuestions(scenario, plan, settings);
            List<DepotQuestions> questions = new ArrayList<>();
            for (Depot depot : scenario.depots()) {
                if (depots.contains(depot.id())) {
                    questions.add(
                            joined
                                    ? fleet.questions(depot, run::submit)
                                    : alone(scenario, plan, depot, settings, run::submit));
                }
            }
            for (Part part : Part.values()) {
                if (joined) {
                    fleet.ask(part, run::submit);
                }
                questions.forEach(depot -> depot.ask(part));
            }
            List<DepotAdvice> answers =
                    questions.stream().map(DepotQuestions::answers).toList();
            return new Advice(
                    scenario, plan, settings, answers, joined ? Optional.of(fleet.advice(answers)) : Optional.empty());
        } finally {
            pool.shutdownNow();
        }
    }

    /**
     * Whether anything can be said of what more room is worth to a fleet: nothing is shared, or the plan has prices of what is, or it was made as one
     * model and can be planned anew.
     */
    public static boolean tellsWorth(Scenario scenario, Plan plan) {
        return plan.proof().given() || SharedLimits.of(scenario).isEmpty() || FleetAnew.asks(scenario, plan);
    }

    private static DepotQuestions alone(Scenario scenario, Plan plan, Depot depot, AdviceSettings settings, Desk desk) {
        DepotPlan planned = plan.depots().stream()
                .filter(each -> each.depot().equals(depot.id()))
                .findFirst()
                .orElseThrow();
        Resolver resolver =
                new Resolver(scenario, depot, new ReplayedPlan(planned, FleetReplay.runDepot(scenario, planned)));
        return new DepotQuestions(
                resolver,
                () -> {
                    DepotResult result = RulesOfThumb.plan(scenario, depot, settings.thumb());
                    return new ReplayedPlan(result.plan(), result.replay());
                },
                settings,
                desk);
    }

    private synchronized <T> Future<T> submit(String what, Callable<T> work) {
        total++;
        return pool.submit(() -> {
            T result = work.call();
            tell(what);
            return result;
        });
    }

    private synchronized void tell(String what) {
        done++;
        progress.answered(what, done, total);
    }

    /** What asks questions hands them over here. */
    @FunctionalInterface
    interface Desk {
        /** Begins work on an answer. */
        <T> Future<T> submit(String what, Callable<T> work);
    }

    /** The answer, or what its work failed with. */
    static <T> T await(Future<T> future) {
        return Awaited.result(future, "interrupted before every question had an answer");
    }
}
