package depot.optimizer.report.compare;

import depot.optimizer.report.text.Figures;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Runs side by side.
 *
 * @param runs names of the runs, the first being what the others are compared with
 * @param warnings what makes the runs hard to compare
 */
public record Comparison(List<String> runs, List<String> warnings, List<Part> parts) {

    /** Copies the lists. */
    public Comparison {
        runs = List.copyOf(runs);
        warnings = List.copyOf(warnings);
        parts = List.copyOf(parts);
    }

    /**
     * Lines that belong together.
     *
     * @param id short name, for addresses and sheets
     */
    public record Part(String id, String title, List<Line> lines) {
        /** Copies the lines. */
        public Part {
            lines = List.copyOf(lines);
        }

        /** Only lines in which the runs differ. */
        Part differing() {
            return new Part(id, title, lines.stream().filter(Line::differs).toList());
        }
    }

    /**
     * One thing in every run.
     *
     * @param decimals shown
     * @param values in the order of the runs
     */
    public record Line(String what, String unit, int decimals, List<Value> values) {
        /** Copies the values. */
        public Line {
            values = List.copyOf(values);
        }

        /** Whether the runs differ in what is shown. */
        boolean differs() {
            return values.stream()
                            .map(value -> value.plain(decimals))
                            .distinct()
                            .count()
                    > 1;
        }

        /** Difference of a run from the first with its sign, "-" where either has no number. */
        public String signedDifference(int run) {
            OptionalDouble more = difference(run);
            if (more.isEmpty()) {
                return "-";
            }
            String text = Figures.read(more.getAsDouble(), decimals);
            boolean zero = Figures.plain(more.getAsDouble(), decimals).equals("0");
            return zero ? Figures.read(0, decimals) : more.getAsDouble() > 0 ? "+" + text : text;
        }

        /** Difference of a run from the first, empty where either has no number. */
        public OptionalDouble difference(int run) {
            OptionalDouble first = values.get(0).number();
            OptionalDouble other = values.get(run).number();
            return first.isPresent() && other.isPresent()
                    ? OptionalDouble.of(other.getAsDouble() - first.getAsDouble())
                    : OptionalDouble.empty();
        }
    }

    /**
     * A number, or why there is none.
     *
     * @param remark in place of a number that is not there
     */
    public record Value(OptionalDouble number, String remark) {

        static Value of(double number) {
            return new Value(OptionalDouble.of(number), "");
        }

        static Value of(OptionalDouble number) {
            return new Value(number, number.isPresent() ? "" : "none");
        }

        static Value none(String why) {
            return new Value(OptionalDouble.empty(), why);
        }

        /** For tables. */
        String plain(int decimals) {
            return number.isPresent() ? Figures.plain(number.getAsDouble(), decimals) : remark;
        }

        /** For pages. */
        public String read(int decimals) {
            return number.isPresent() ? Figures.read(number.getAsDouble(), decimals) : remark;
        }
    }
}
