package depot.optimizer.sweep;

import depot.optimizer.fleet.AnswerStore;
import depot.optimizer.fleet.Awaited;
import depot.optimizer.fleet.LeftBehind;
import depot.optimizer.fleet.OpenDepot;
import depot.optimizer.solve.NoPlanException;
import java.util.Map;
import java.util.Optional;
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
    private final Map<String, FutureTask<FleetOutcome>> fleets = new ConcurrentHashMap<>();
    private final CaseStore remembered;
    private final Map<String, Object> atWork = new ConcurrentHashMap<>();

    Workshop(int threads, CaseStore store) {
        this.pool = Executors.newFixedThreadPool(threads);
        this.store = store;
        remembered = new RememberingStore(store);
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
        return once(jobs, job.key(), () -> job.run(store));
    }

    /**
     * The same for a depot whose visits are settled.
     *
     * @throws NoPlanException if there is no plan within the limits
     */
    DepotOutcome outcome(SettledJob job) {
        return once(jobs, job.key(), () -> job.run(store));
    }

    /**
     * The same for a whole fleet.
     *
     * @param threads that may work on it
     * @throws NoPlanException if there is no plan within the limits
     * @throws depot.optimizer.fleet.NothingFitsException if none keeps what the depots share
     */
    FleetOutcome outcome(FleetJob job, int threads) {
        return once(fleets, job.key(), () -> job.run(store, threads));
    }

    /** The same for a fleet whose search others begin with. */
    FleetOutcome leaving(FleetJob job, int threads) {
        return once(fleets, job.key(), () -> job.runLeaving(remembered, threads));
    }

    /** What {@link #leaving} has left behind; empty where the depots share nothing. */
    Optional<LeftBehind> left(FleetJob job) {
        return job.left(remembered);
    }

    /** What efforts for a depot came to, in this sweep or before it was interrupted. */
    AnswerStore answers(DepotJob job) {
        return new KeptEfforts(remembered, job, job.key());
    }

    /** Makes the next effort for a depot. Whoever works on an equal one at the same time waits, and finds the answer kept. */
    void further(DepotJob job, OpenDepot depot) {
        synchronized (atWork.computeIfAbsent(job.key(), key -> new Object())) {
            depot.further();
        }
    }

    private static <T> T once(Map<String, FutureTask<T>> done, String key, Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        FutureTask<T> first = done.putIfAbsent(key, task);
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
