package depot.optimizer.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/** Has several depots worked on at a time, until the run is asked to end. */
final class DepotThreads implements AutoCloseable {

    private final RunControl control;
    private final ExecutorService threads;

    DepotThreads(int count, RunControl control) {
        this.control = control;
        threads = Executors.newFixedThreadPool(count);
    }

    /**
     * Answers in the order of the questions. Returns, or throws what the first of them failed with, when none is worked on any more, so that nothing
     * changes afterwards; what has not begun by then is left.
     *
     * @throws StoppedException if the run was asked to end before all had begun
     */
    <Q, T> List<T> all(List<Q> questions, Function<Q, T> answer) {
        AtomicBoolean failed = new AtomicBoolean();
        List<Future<T>> futures = new ArrayList<>();
        for (Q question : questions) {
            futures.add(threads.submit(() -> {
                if (failed.get() || control.stop().getAsBoolean()) {
                    throw new StoppedException();
                }
                try {
                    return answer.apply(question);
                } catch (RuntimeException e) {
                    failed.set(true);
                    throw e;
                }
            }));
        }
        List<T> answers = new ArrayList<>();
        RuntimeException first = null;
        for (Future<T> future : futures) {
            try {
                answers.add(Awaited.result(future, "interrupted before the fleet had a plan"));
            } catch (RuntimeException e) {
                first = first == null ? e : first;
            }
        }
        if (first != null) {
            throw first;
        }
        return answers;
    }

    /** Other work, likewise. */
    void run(List<Runnable> work) {
        all(work, piece -> {
            piece.run();
            return true;
        });
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
