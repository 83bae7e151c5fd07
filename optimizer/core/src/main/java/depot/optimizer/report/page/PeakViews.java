package depot.optimizer.report.page;

import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How near circuits and supplies come to their limit on the day that is the worst for each. */
final class PeakViews {

    private PeakViews() {}

    /** One row for each circuit of a depot, and one for its supply. */
    static TableView ofDepot(List<BusiestDay> busiest) {
        TableView.Builder table = measured(
                TableView.of("peaks", "Highest load that the replay measured, against the limit at that moment")
                        .words("Circuit or supply"));
        busiest.forEach(day -> table.row(row(Stream.of(day.peak().circuit()), day)));
        return table.build();
    }

    /** One row for each circuit or supply, with its depot. */
    static TableView ofFleet(List<BusiestDay> busiest) {
        TableView.Builder table = measured(
                TableView.of("tightest", "Circuits and supplies nearest to their limit, as the replay measured them")
                        .words("Circuit or supply", "Depot"));
        busiest.forEach(day -> table.row(row(Stream.of(day.peak().circuit(), day.depot()), day)));
        return table.build();
    }

    private static TableView.Builder measured(TableView.Builder table) {
        return table.words("Busiest kind of day", "At")
                .numbers("Load (A)", "Limit (A)", "Share of the limit", "Margin (A)");
    }

    private static List<Cell> row(Stream<String> place, BusiestDay day) {
        double limit = day.peak().limitAmps();
        double amps = day.peak().amps();
        List<String> texts = new ArrayList<>(place.toList());
        texts.addAll(List.of(
                DayNames.of(day.replay().occurrences()),
                Clock.time(day.peak().minute()),
                Figures.read(amps, 1),
                Figures.read(limit, 1),
                day.shareWords(),
                Figures.read(limit - amps, 1)));
        return texts.stream().map(Cell::text).toList();
    }
}
