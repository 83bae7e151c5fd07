package depot.optimizer.cli;

import depot.optimizer.report.compare.Comparison;
import depot.optimizer.report.compare.Comparison.Line;
import depot.optimizer.report.compare.Comparison.Part;
import java.util.ArrayList;
import java.util.List;

/** A comparison on a few lines: what each run comes to. */
final class ComparisonSummary {

    /** Lines of the first part that are printed: to pay at once, present cost. */
    private static final int PRINTED = 2;

    private static final int LEAST_WIDTH = 16;

    private final Comparison comparison;

    ComparisonSummary(Comparison comparison) {
        this.comparison = comparison;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        Part results = comparison.parts().get(0);
        for (int run = 0; run < comparison.runs().size(); run++) {
            lines.add(comparison.runs().get(run));
            for (Line line : results.lines().subList(0, PRINTED)) {
                String value = line.values().get(run).read(line.decimals()) + " " + line.unit();
                lines.add("  " + padded(line.what(), results) + " " + value + more(line, run));
            }
        }
        return lines;
    }

    private static String padded(String label, Part results) {
        int width = results.lines().subList(0, PRINTED).stream()
                .mapToInt(line -> line.what().length())
                .reduce(LEAST_WIDTH, Math::max);
        return label + " ".repeat(width - label.length());
    }

    private static String more(Line line, int run) {
        return run == 0 || line.difference(run).isEmpty() ? "" : " (" + line.signedDifference(run) + ")";
    }
}
