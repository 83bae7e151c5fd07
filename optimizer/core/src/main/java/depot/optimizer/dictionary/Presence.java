package depot.optimizer.dictionary;

/** Whether a table or a field has to be there. */
public enum Presence {
    /** It has to be there. */
    REQUIRED,
    /** It may be missing or blank. */
    OPTIONAL
}
