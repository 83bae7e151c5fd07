package depot.optimizer.sweep;

import depot.optimizer.fleet.Awaited;
import depot.optimizer.solve.NoPlanException;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;

/** Does jobs side by side, each different one once. */
final class Workshop implements AutoCloseable {

    private final ExecutorService pool;
    private final CaseStore store;
    private final Map<String, FutureTask<DepotOutcome>> jobs = new ConcurrentHashMap<>();

    Workshop(int threads, CaseStore store) {
        this.pool = Executors.newFixedThreadPool(threads);
        this.store = store;
    }

    /** Begins work on something that asks for jobs. */
    <T> Future<T> submit(Callable<T> work) {
        return pool.submit(work);
    }

    /**
     * The outcome of a job; whoever asks first does it, others wait for it.
     *
     * @throws NoPlanException if there is no plan within the limits
     */
    DepotOutcome outcome(DepotJob job) {
        FutureTask<DepotOutcome> task = new FutureTask<>(() -> job.run(store));
        FutureTask<DepotOutcome> first = jobs.putIfAbsent(job.key(), task);
        if (first != null) {
            return await(first);
        }
        task.run();
        return await(task);
    }

    /** The result of work, or what it failed with. */
    static <T> T await(Future<T> future) {
        return Awaited.result(future, "interrupted before every case had a plan");
    }

    @Override
    public void close() {
        pool.shutdownNow();
    }
}
