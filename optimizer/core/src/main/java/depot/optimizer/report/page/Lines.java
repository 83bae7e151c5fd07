package depot.optimizer.report.page;

import depot.optimizer.replay.Series;
import depot.optimizer.report.page.StepLine.Hourly;
import depot.optimizer.report.page.StepLine.Style;
import java.util.List;
import java.util.stream.IntStream;

/** Turns what the replay measured into lines of charts. */
final class Lines {

    private Lines() {}

    static StepLine of(String name, Style style, Hourly hourly, Series series) {
        return sum(name, style, hourly, List.of(series));
    }

    /** The sum of series that have the same steps. */
    static StepLine sum(String name, Style style, Hourly hourly, List<Series> parts) {
        Series first = parts.get(0);
        List<Double> values = IntStream.range(0, first.size())
                .mapToObj(step ->
                        parts.stream().mapToDouble(part -> part.at(step)).sum())
                .toList();
        return new StepLine(name, style, hourly, first.startMinute(), first.stepMinutes(), values);
    }
}
