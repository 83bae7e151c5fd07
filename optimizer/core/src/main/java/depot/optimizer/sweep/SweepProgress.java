package depot.optimizer.sweep;

/** Is told how far a sweep has come. Called from several threads, one call at a time. */
public interface SweepProgress {

    /** Tells nobody. */
    SweepProgress SILENT = (what, done, total) -> {};

    /**
     * A depot of a case is planned and replayed.
     *
     * @param what case and depot
     */
    void planned(String what, int done, int total);
}
