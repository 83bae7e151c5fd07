package depot.optimizer.plan;

import java.util.List;

/**
 * How good a plan is proven to be.
 *
 * @param cost present cost of the plan over the horizon
 * @param bound no plan that keeps the model's rules costs less
 * @param gap (cost - bound) / cost, 0 for a plan that costs nothing
 * @param proven whether the bound was proven to the gap that was asked for
 */
public record Certificate(double cost, double bound, double gap, boolean proven) {

    /** Of plans that share nothing: their costs and bounds add up. */
    public static Certificate sum(List<Certificate> parts, double askedGap) {
        return of(
                parts.stream().mapToDouble(Certificate::cost).sum(),
                parts.stream().mapToDouble(Certificate::bound).sum(),
                askedGap);
    }

    /** A certificate for a cost and a bound, proven when the gap is within the one asked for. */
    public static Certificate of(double cost, double bound, double askedGap) {
        double gap = cost == 0 ? 0 : Math.max(0, (cost - bound) / Math.abs(cost));
        return new Certificate(cost, bound, gap, gap <= askedGap + 1e-9);
    }
}
