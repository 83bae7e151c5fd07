package depot.optimizer.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The internal rate of return of yearly flows: the rate at which their present value is 0.
 *
 * @param rate a year, empty: there is none, or more than one
 * @param finding why
 */
public record ReturnRate(OptionalDouble rate, Finding finding) {

    private static final double LEAST_GROWTH = 0.01;
    private static final double MOST_GROWTH = 101;
    private static final int STEPS = 2000;
    private static final int EVALUATIONS = 1000;
    private static final double ACCURACY = 1e-12;

    /** What the search found. */
    public enum Finding {
        /** One rate. */
        FOUND,
        /** Nothing is paid before something is received, or nothing is ever received: no rate makes sense. */
        NO_CHANGE_OF_SIGN,
        /** No rate between -99 % and 10,000 %. */
        OUT_OF_RANGE,
        /** The flows change their sign more than once, and more than one rate fits. */
        SEVERAL
    }

    /** Searches, on a grid of rates, for every change of sign of the present value, and narrows it down. */
    public static ReturnRate of(List<Double> flows) {
        if (flows.stream().noneMatch(flow -> flow < 0) || flows.stream().noneMatch(flow -> flow > 0)) {
            return new ReturnRate(OptionalDouble.empty(), Finding.NO_CHANGE_OF_SIGN);
        }
        UnivariateFunction value = growth -> presentValue(flows, growth);
        List<Double> rates = new ArrayList<>();
        double from = LEAST_GROWTH;
        for (int step = 1; step <= STEPS; step++) {
            double to = LEAST_GROWTH * Math.pow(MOST_GROWTH / LEAST_GROWTH, (double) step / STEPS);
            if (value.value(to) == 0) {
                rates.add(to - 1);
            } else if (value.value(from) * value.value(to) < 0) {
                rates.add(new BrentSolver(ACCURACY).solve(EVALUATIONS, value, from, to) - 1);
            }
            from = to;
        }
        return switch (rates.size()) {
            case 0 -> new ReturnRate(OptionalDouble.empty(), Finding.OUT_OF_RANGE);
            case 1 -> new ReturnRate(OptionalDouble.of(rates.get(0)), Finding.FOUND);
            default -> new ReturnRate(OptionalDouble.empty(), Finding.SEVERAL);
        };
    }

    /** At 1 + rate, by Horner's rule: no power of a small number is ever divided by. */
    private static double presentValue(List<Double> flows, double growth) {
        double sum = 0;
        for (double flow : flows) {
            sum = sum * growth + flow;
        }
        // At the end of the last year, and so that neither end of the grid dwarfs the other.
        return sum / Math.pow(Math.max(1, growth), flows.size() - 1);
    }
}
