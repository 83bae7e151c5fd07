package depot.optimizer.check;

import depot.optimizer.check.Finding.Severity;
import depot.optimizer.dictionary.Field;
import depot.optimizer.read.ReadProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects findings. */
final class Findings {
    private static final Comparator<Entry> ORDER = Comparator.comparing((Entry entry) -> entry.finding.file())
            .thenComparing(entry -> entry.finding.line())
            .thenComparing(entry -> entry.position)
            .thenComparing(entry -> entry.finding.column())
            .thenComparing(entry -> entry.finding.message());

    /** A cell may hold a whole file after a wrong quote; a finding shows its beginning. */
    private static final int MOST_SHOWN = 100;

    private final List<Entry> entries = new ArrayList<>();

    private record Entry(Finding finding, int position) {}

    /** An error in a cell. */
    void error(TypedRow row, Field<?> field, String message, String hint) {
        add(Severity.ERROR, row, field, message, hint);
    }

    /** An error in a cell. */
    void error(Located<?> located, Field<?> field, String message, String hint) {
        add(Severity.ERROR, located.row(), field, message, hint);
    }

    /** A notice about a cell. */
    void notice(Located<?> located, Field<?> field, String message, String hint) {
        add(Severity.NOTICE, located.row(), field, message, hint);
    }

    /** An error of a whole file. */
    void errorOfFile(String file, String message, String hint) {
        entries.add(new Entry(new Finding(Severity.ERROR, file, 0, "", "", message, hint), 0));
    }

    /** A notice about a whole file. */
    void noticeOfFile(String file, String message, String hint) {
        entries.add(new Entry(new Finding(Severity.NOTICE, file, 0, "", "", message, hint), 0));
    }

    /** An error found while the file was read. */
    void error(ReadProblem problem) {
        Finding finding = new Finding(
                Severity.ERROR,
                problem.file(),
                problem.line(),
                problem.column(),
                shown(problem.value()),
                problem.message(),
                problem.hint());
        entries.add(new Entry(finding, problem.position()));
    }

    /** Whether any finding is an error. */
    boolean anyError() {
        return entries.stream().anyMatch(entry -> entry.finding.severity() == Severity.ERROR);
    }

    /** All findings by file, line and column. */
    List<Finding> sorted() {
        return entries.stream()
                .sorted(ORDER)
                .map(entry -> entry.finding)
                .distinct()
                .toList();
    }

    private void add(Severity severity, TypedRow row, Field<?> field, String message, String hint) {
        TypedRow.Place place = row.place(field);
        Finding finding = new Finding(
                severity, row.table().file(), place.line(), field.name(), shown(row.text(field)), message, hint);
        entries.add(new Entry(finding, place.position()));
    }

    private static String shown(String value) {
        return value.length() <= MOST_SHOWN ? value : value.substring(0, MOST_SHOWN) + "...";
    }
}
