package depot.optimizer.read;

/**
 * Something wrong with a file, before its values are looked at.
 *
 * @param line from 1, 0: the whole file
 * @param column name of the column or setting, empty: the whole line
 * @param position position of the column within its line, for sorting
 * @param value what the file says, empty: nothing worth showing
 */
public record ReadProblem(
        String file, int line, String column, int position, String value, String message, String hint) {

    static ReadProblem ofFile(String file, String message, String hint) {
        return new ReadProblem(file, 0, "", 0, "", message, hint);
    }

    static ReadProblem ofLine(String file, int line, String message, String hint) {
        return new ReadProblem(file, line, "", 0, "", message, hint);
    }

    static ReadProblem ofValue(String file, int line, String column, String value, String message, String hint) {
        return new ReadProblem(file, line, column, 0, value, message, hint);
    }
}
