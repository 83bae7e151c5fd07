package depot.optimizer.check;

/**
 * Something to put right in a scenario, or to know about it.
 *
 * @param file name of the file within the scenario's folder
 * @param line from 1, 0: the whole file
 * @param column name of the column or setting, empty: the whole line
 * @param value what the file says there, empty: nothing
 * @param message what is wrong
 * @param hint what to do about it
 */
public record Finding(
        Severity severity, String file, int line, String column, String value, String message, String hint) {

    /** How grave a finding is. */
    public enum Severity {
        /** The scenario cannot be used until it is put right. */
        ERROR,
        /** The scenario can be used, maybe not in the way that was meant. */
        NOTICE
    }
}
