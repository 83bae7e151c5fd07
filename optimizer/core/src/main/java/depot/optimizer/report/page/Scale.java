package depot.optimizer.report.page;

import depot.optimizer.report.page.LineChart.Tick;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * An axis with round marks that covers a span of values.
 *
 * @param from value at its first place
 * @param to value at its last place
 * @param step between two marks
 * @param first place in the drawing
 * @param last place in the drawing
 */
record Scale(double from, double to, double step, double first, double last) {

    private static final int MOST_STEPS = 6;

    /** An axis on which two values and everything between them have room. */
    static Scale covering(double low, double high, double first, double last) {
        double span = high > low ? high - low : Math.max(1, Math.abs(high));
        double step = roundStep(span);
        double from = step * Math.floor(low / step + 1e-9);
        double to = step * Math.ceil(high / step - 1e-9);
        return new Scale(from, to > from ? to : from + step, step, first, last);
    }

    /** 1, 2 or 5 times a power of ten. */
    private static double roundStep(double span) {
        double power = Math.pow(10, Math.floor(Math.log10(span / MOST_STEPS)));
        for (double factor : new double[] {1, 2, 5}) {
            if (span / (factor * power) <= MOST_STEPS) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /** Where a value is drawn. */
    double place(double value) {
        return Math.round(10 * (first + (last - first) * (value - from) / (to - from))) / 10.0;
    }

    /** What a reader must not overlook, empty: nothing. */
    String note() {
        return from == 0 ? "" : " The axis does not begin at 0.";
    }

    List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; from + i * step <= to + step / 2; i++) {
            double value = from + i * step;
            ticks.add(new Tick(place(value), step >= 1 ? Figures.read(value, 0) : Figures.plain(value, 4)));
        }
        return ticks;
    }
}
