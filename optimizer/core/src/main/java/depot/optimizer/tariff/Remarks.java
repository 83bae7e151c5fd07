package depot.optimizer.tariff;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.read.JsonValue;
import depot.optimizer.read.ReadProblem;
import java.util.ArrayList;
import java.util.List;

/** Collects what is found while a record is turned into a tariff. The names of files are whole paths here. */
final class Remarks {
    private static final int MOST_SHOWN = 60;

    private final String record;
    private final List<Finding> findings = new ArrayList<>();

    /** For a record in this file. */
    Remarks(String record) {
        this.record = record;
    }

    /** Something wrong with a value of the record; {@code field} is its place, such as {@code flatdemandmonths[3]}. */
    void error(JsonValue value, String field, String message, String hint) {
        String shown = value.text().length() <= MOST_SHOWN
                ? value.text()
                : value.text().substring(0, MOST_SHOWN) + "...";
        add(new Finding(Severity.ERROR, record, value.line(), field, shown, message, hint));
    }

    /** Something wrong with what a field of the record comes to, or its lack. */
    void error(String field, int line, String message, String hint) {
        add(new Finding(Severity.ERROR, record, line, field, "", message, hint));
    }

    /** Something that is good to know about a field of the record. */
    void notice(String field, int line, String message, String hint) {
        add(new Finding(Severity.NOTICE, record, line, field, "", message, hint));
    }

    /** Something wrong with an option of the command. */
    void errorOfOption(String option, String value, String message, String hint) {
        add(new Finding(Severity.ERROR, option, 0, "", value, message, hint));
    }

    /** Something that is good to know about an option of the command. */
    void noticeOfOption(String option, String value, String message, String hint) {
        add(new Finding(Severity.NOTICE, option, 0, "", value, message, hint));
    }

    /** Something wrong with another file. */
    void errorOfFile(String file, int line, String column, String value, String message, String hint) {
        add(new Finding(Severity.ERROR, file, line, column, value, message, hint));
    }

    /** Something wrong with how a file is written. */
    void error(String file, ReadProblem problem) {
        errorOfFile(file, problem.line(), problem.column(), problem.value(), problem.message(), problem.hint());
    }

    /** Whether anything found keeps the record from being a tariff. */
    boolean anyError() {
        return errors() > 0;
    }

    /** How many errors there are so far; a step that added none may be relied on. */
    long errors() {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .count();
    }

    /** Everything found, in the order in which it was. */
    List<Finding> all() {
        return List.copyOf(findings);
    }

    private void add(Finding finding) {
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
    }
}
