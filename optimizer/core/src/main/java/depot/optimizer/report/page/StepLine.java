package depot.optimizer.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A value over the day that holds for a step at a time.
 *
 * @param name for the legend
 * @param style look of the line in the charts
 * @param hourly which value of an hour its table gives
 * @param startMinute minutes after midnight of the first value
 * @param stepMinutes length of each step
 * @param values one a step
 */
public record StepLine(String name, Style style, Hourly hourly, int startMinute, int stepMinutes, List<Double> values) {

    /** Which of an hour's values counts. */
    public enum Hourly {
        /** The highest, of a load. */
        HIGHEST,
        /** The lowest, of a limit or a stock. */
        LOWEST
    }

    /** Looks that differ in colour and in dashes, so that neither is needed alone. */
    public enum Style {
        /** First line of values. */
        FIRST("line-1"),
        /** Second line of values. */
        SECOND("line-2"),
        /** Third line of values. */
        THIRD("line-3"),
        /** Fourth line of values. */
        FOURTH("line-4"),
        /** Fifth line of values. */
        FIFTH("line-5"),
        /** What must not be passed. */
        LIMIT("line-6");

        private static final List<Style> VALUES = List.of(FIRST, SECOND, THIRD, FOURTH, FIFTH);

        private final String css;

        Style(String css) {
            this.css = css;
        }

        /** For the so-many-th line of values, from 0; after the fifth the looks come again. */
        public static Style of(int index) {
            return VALUES.get(index % VALUES.size());
        }

        /** Class in the style sheet. */
        public String css() {
            return css;
        }
    }

    /** Minute after the last step. */
    int endMinute() {
        return startMinute + stepMinutes * values.size();
    }

    double at(int minute) {
        return values.get((minute - startMinute) / stepMinutes);
    }

    double highest() {
        return highest(startMinute, endMinute());
    }

    /** Of the steps that touch the span. */
    double highest(int fromMinute, int toMinute) {
        return touching(fromMinute, toMinute).stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
    }

    /** Of the steps that touch the span. */
    double lowest(int fromMinute, int toMinute) {
        return touching(fromMinute, toMinute).stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0);
    }

    double lowest() {
        return lowest(startMinute, endMinute());
    }

    private List<Double> touching(int fromMinute, int toMinute) {
        int from = (fromMinute - startMinute) / stepMinutes;
        int to = Math.min(values.size(), -Math.floorDiv(startMinute - toMinute, stepMinutes));
        return values.subList(from, Math.max(from, to));
    }

    /** Minutes at which the value differs from the step before, the first included. */
    List<Integer> changes() {
        List<Integer> changes = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            if (i == 0 || Double.compare(values.get(i), values.get(i - 1)) != 0) {
                changes.add(startMinute + i * stepMinutes);
            }
        }
        return changes;
    }
}
