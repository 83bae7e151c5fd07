package depot.optimizer.sweep;

/** Finds out whether the base plan holds with a loss, and where not, what has to be bought on top. */
interface LossWork {

    /** What is lost where, in words. */
    String words();

    /** The answer. */
    LossResult result(Workshop workshop);
}
