package depot.optimizer.check;

import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.TimeSyntax;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lays the spans of one day side by side and tells where they overlap and where they leave a gap. */
final class SpanSweep {
    private static final int MIDNIGHT = 24 * 60;

    private SpanSweep() {}

    /**
     * A span of a day.
     *
     * @param row where it is declared
     * @param from minutes after midnight
     * @param to minutes after midnight, later than {@code from}
     */
    record Span(TypedRow row, int from, int to) {
        String words() {
            return TimeSyntax.text(from) + " to " + TimeSyntax.text(to);
        }
    }

    /** Hears of faults. */
    interface Faults {
        /** {@code later} begins before {@code earlier} ends. */
        void overlap(Span earlier, Span later);

        /** No span covers a part of the day; {@code besides} ends where the gap begins or begins where it ends. */
        void gap(int from, int to, Span besides);
    }

    /** Goes through the spans of a day, of which there is at least one. */
    static void sweep(List<Span> spans, Faults faults) {
        List<Span> sorted = new ArrayList<>(spans);
        sorted.sort(Comparator.comparingInt(Span::from).thenComparingInt(Span::to));
        Span furthest = null;
        for (Span span : sorted) {
            int covered = furthest == null ? 0 : furthest.to();
            if (span.from() < covered) {
                faults.overlap(furthest, span);
            } else if (span.from() > covered) {
                faults.gap(covered, span.from(), furthest == null ? span : furthest);
            }
            furthest = span.to() > covered ? span : furthest;
        }
        if (furthest != null && furthest.to() < MIDNIGHT) {
            faults.gap(furthest.to(), MIDNIGHT, furthest);
        }
    }

    /** Reports a span that does not end after it begins. */
    static void checkOrder(TypedRow row, Field<Integer> from, Field<Integer> to, Findings findings) {
        int start = row.get(from);
        int end = row.get(to);
        if (end <= start) {
            String split = end == 0
                    ? "write 24:00 for the end of the day"
                    : "split it at midnight: " + TimeSyntax.text(start) + " to 24:00, and 00:00 to "
                            + TimeSyntax.text(end);
            findings.error(row, to, "the span ends before it begins, at " + TimeSyntax.text(start), split);
        }
    }
}
