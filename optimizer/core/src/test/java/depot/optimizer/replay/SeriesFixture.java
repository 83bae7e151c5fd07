package depot.optimizer.replay;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Series for tests of other packages, which cannot make any. */
public final class SeriesFixture {

    private SeriesFixture() {}

    /** A day in five-minute steps. */
    public static Series of(int startMinute, IntToDoubleFunction valueAtMinute) {
        double[] minutes = IntStream.range(startMinute, startMinute + 1440)
                .mapToDouble(valueAtMinute)
                .toArray();
        return Series.highest(startMinute, 5, minutes);
    }
}
