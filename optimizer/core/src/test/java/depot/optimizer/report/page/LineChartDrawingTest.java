package depot.optimizer.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.report.page.LineChart.Tick;
import depot.optimizer.report.page.StepLine.Hourly;
import depot.optimizer.report.page.StepLine.Style;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LineChartDrawingTest {

    @Test
    void drawsStepsFromEdgeToEdge() {
        LineChart chart = chart(line(Style.FIRST, 0, 1000, 0, 0));

        assertThat(chart.lines().get(0).path()).isEqualTo("M52 236H216V26H380V236H708");
    }

    @Test
    void marksRoundValuesUpToTheHighest() {
        assertThat(chart(line(Style.FIRST, 0, 2359, 0, 0)).valueTicks())
                .extracting(Tick::label)
                .containsExactly("0", "500", "1,000", "1,500", "2,000", "2,500");
        assertThat(chart(line(Style.FIRST, 0, 0, 0, 0)).valueTicks())
                .extracting(Tick::label)
                .containsExactly("0", "1");
        assertThat(chart(line(Style.FIRST, 3, 0, 0, 0)).valueTicks())
                .extracting(Tick::label)
                .first()
                .isEqualTo("0");
    }

    @Test
    void marksTimesPastMidnight() {
        assertThat(chart(line(Style.FIRST, Collections.nCopies(24, 1.0).toArray(Double[]::new)))
                        .timeTicks())
                .extracting(Tick::label)
                .containsExactly("09:00", "12:00", "15:00", "18:00", "21:00", "00:00 +1", "03:00 +1", "06:00 +1");
    }

    @Test
    void givesTheHighestLoadAndTheLowestLimitOfEachHour() {
        TableView numbers = LineChartDrawing.of(
                        "c",
                        "t",
                        "d",
                        "W",
                        List.of(
                                new StepLine("Load", Style.FIRST, Hourly.HIGHEST, 405, 30, List.of(5.0, 1.0, 7.0, 2.0)),
                                new StepLine(
                                        "Limit", Style.LIMIT, Hourly.LOWEST, 405, 30, List.of(9.0, 8.0, 9.0, 9.0))))
                .numbers();

        assertThat(numbers.rows().stream().map(LineChartDrawingTest::texts))
                .containsExactly(
                        List.of("06:45", "07:00", "5", "9"),
                        List.of("07:00", "08:00", "7", "8"),
                        List.of("08:00", "08:45", "7", "9"));
    }

    private static List<String> texts(List<Cell> row) {
        return row.stream().map(Cell::text).toList();
    }

    private static LineChart chart(StepLine... lines) {
        return LineChartDrawing.of("c", "title", "description", "W", List.of(lines));
    }

    private static StepLine line(Style style, Number... values) {
        return new StepLine(
                "line",
                style,
                Hourly.HIGHEST,
                405,
                60,
                Stream.of(values).map(Number::doubleValue).toList());
    }
}
