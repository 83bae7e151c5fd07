package depot.optimizer.sweep.spec;

import depot.optimizer.check.Finding;
import depot.optimizer.check.Finding.Severity;
import depot.optimizer.read.JsonTree;
import depot.optimizer.read.ReadProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with a sweep's file. */
final class SweepFindings {
    /** A value may be long after a slip; a finding shows its beginning. */
    private static final int MOST_SHOWN = 100;

    private static final Comparator<Entry> ORDER = Comparator.comparingInt((Entry entry) -> entry.finding.line())
            .thenComparingInt(Entry::character)
            .thenComparing(entry -> entry.finding.column())
            .thenComparing(entry -> entry.finding.message());

    private record Entry(Finding finding, int character) {}

    private final String file;
    private final List<Entry> entries = new ArrayList<>();

    SweepFindings(String file) {
        this.file = file;
    }

    void error(ReadProblem problem) {
        add(
                new Finding(
                        Severity.ERROR,
                        file,
                        problem.line(),
                        problem.column(),
                        shown(problem.value()),
                        problem.message(),
                        problem.hint()),
                problem.position());
    }

    /** An error in a member. */
    void error(JsonTree at, String path, String message, String hint) {
        add(new Finding(Severity.ERROR, file, at.line(), path, shown(at.text()), message, hint), at.character());
    }

    private void add(Finding finding, int character) {
        entries.add(new Entry(finding, character));
    }

    boolean none() {
        return entries.isEmpty();
    }

    List<Finding> sorted() {
        return entries.stream().sorted(ORDER).map(Entry::finding).distinct().toList();
    }

    private static String shown(String value) {
        return value.length() <= MOST_SHOWN ? value : value.substring(0, MOST_SHOWN) + "...";
    }
}
