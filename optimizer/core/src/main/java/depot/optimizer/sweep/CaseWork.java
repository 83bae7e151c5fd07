package depot.optimizer.sweep;

/** A case on its way. */
interface CaseWork {

    /** How many plans it takes. */
    int steps();

    /** Begins the work. */
    void begin();

    /** Waits for it. */
    CaseResult result();
}
