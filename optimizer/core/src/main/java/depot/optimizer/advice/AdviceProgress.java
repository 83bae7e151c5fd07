package depot.optimizer.advice;

/** Is told how far the answers are. Called from several threads, one call at a time. */
@FunctionalInterface
public interface AdviceProgress {

    /** Tells nobody. */
    AdviceProgress SILENT = (what, done, total) -> {};

    /** A question has its answer. */
    void answered(String what, int done, int total);
}
