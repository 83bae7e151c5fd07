package depot.optimizer.advice;

import depot.optimizer.advice.AdviceSettings.Part;
import depot.optimizer.fleet.Awaited;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.Plan;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.solve.NoPlanException;
import java.util.ArrayList;
import java.util.List;
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
            List<DepotQuestions> questions = new ArrayList<>();
            for (DepotPlan depot : plan.depots()) {
                if (depots.contains(depot.depot())) {
                    questions.add(new DepotQuestions(scenario, depot, settings, run::submit));
                }
            }
            for (Part part : Part.values()) {
                questions.forEach(depot -> depot.ask(part));
            }
            return new Advice(
                    scenario,
                    plan,
                    settings,
                    questions.stream().map(DepotQuestions::answers).toList());
        } finally {
            pool.shutdownNow();
        }
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
