package depot.optimizer.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.report.page.LineChart.Tick;
import depot.optimizer.report.page.StepLine.Style;
import depot.optimizer.report.page.YearChart.YearLine;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class YearChartTest {

    private static LineChart chart(Double... values) {
        YearLine line = new YearLine("plan", Style.FIRST, List.of(values));
        return YearChart.of("c", "Costs", "Costs by year.", "Costs so far", "EUR", List.of(line));
    }

    @Test
    void linesGoFromNowToTheLastYear() {
        LineChart chart = chart(0.0, 50.0, 100.0);

        assertThat(chart.unit()).isEqualTo("Costs so far (EUR)");
        assertThat(chart.timeTicks()).extracting(Tick::label).containsExactly("now", "1", "2");
        assertThat(chart.lines().get(0).path()).isEqualTo("M52 236L380 131L708 26");
        assertThat(chart.numbers().rows()).hasSize(3);
    }

    @Test
    void valuesBelowZeroHaveRoom() {
        LineChart chart = chart(100.0, -50.0);

        assertThat(chart.valueTicks()).extracting(Tick::label).startsWith("-50").endsWith("100");
        assertThat(chart.lines().get(0).path()).isEqualTo("M52 26L708 236");
    }

    @Test
    void largeValuesAreMarkedInThousands() {
        LineChart chart = chart(0.0, 650_000.0);

        assertThat(chart.unit()).isEqualTo("Costs so far (thousand EUR)");
        assertThat(chart.valueTicks())
                .extracting(Tick::label)
                .startsWith("0", "200")
                .allMatch(label -> label.length() <= 5);
        assertThat(chart.numbers().rows().get(1).get(1).text()).isEqualTo("650,000");
    }

    @Test
    void longHorizonsHaveFewMarks() {
        Double[] values =
                IntStream.rangeClosed(0, 40).mapToObj(year -> 10.0 * year).toArray(Double[]::new);

        assertThat(chart(values).timeTicks()).hasSizeLessThanOrEqualTo(13);
        assertThat(chart(values).lines().get(0).path()).doesNotContain("NaN");
    }

    @Test
    void nothingAtAllIsALineOnTheAxis() {
        assertThat(chart(0.0, 0.0).lines().get(0).path()).isEqualTo("M52 236L708 236");
    }
}
