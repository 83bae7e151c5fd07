package depot.optimizer.report.page;

import depot.optimizer.report.text.Clock;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.List;

/** The numbers of a chart by the hour: the highest value of a load in the hour, the lowest of a limit or a stock. */
final class HourTable {

    private static final int HOUR = 60;

    private HourTable() {}

    static TableView of(String id, String caption, List<StepLine> lines) {
        TableView.Builder table = TableView.of(id, caption).words("From", "To");
        lines.forEach(line ->
                table.numbers(line.name() + (line.hourly() == StepLine.Hourly.LOWEST ? " (lowest)" : " (highest)")));
        int end = lines.get(0).endMinute();
        for (int from = lines.get(0).startMinute(); from < end; from = nextHour(from, end)) {
            int to = nextHour(from, end);
            List<Cell> row = new ArrayList<>(List.of(Cell.text(Clock.time(from)), Cell.text(Clock.time(to))));
            for (StepLine line : lines) {
                row.add(Cell.text(Figures.plain(value(line, from, to), 2)));
            }
            table.row(row);
        }
        return table.build();
    }

    private static int nextHour(int minute, int end) {
        return Math.min(end, (Math.floorDiv(minute, HOUR) + 1) * HOUR);
    }

    private static double value(StepLine line, int from, int to) {
        return line.hourly() == StepLine.Hourly.LOWEST ? line.lowest(from, to) : line.highest(from, to);
    }
}
