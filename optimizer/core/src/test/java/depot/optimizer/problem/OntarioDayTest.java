package depot.optimizer.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.fixture.Planned;
import depot.optimizer.fixture.ScenarioText;
import java.time.DayOfWeek;
import org.junit.jupiter.api.Test;

/**
 * Ontario Energy Board time-of-use prices from 1 November 2022 (seen, recomputed): off 7.4, mid 10.2, on 15.1 cents a kWh. 1 kW for a day costs 240.6
 * cents on a weekday and 177.6 at the weekend, in either season.
 */
class OntarioDayTest {

    private static final double CENT_TENTH = 1e-6;

    private static DepotProblem problem() {
        ScenarioText text = ScenarioText.tiny()
                .rows("seasons.csv", "winter,22")
                .replace("stops.csv", "Mon-Fri", "Mon-Sun")
                .replace("work.csv", "Mon-Fri", "Mon-Sun")
                .rows(
                        "stops.csv",
                        "winter,Mon-Sun,crew-1,1,north,,07:00",
                        "winter,Mon-Sun,crew-1,2,park,08:00,15:00",
                        "winter,Mon-Sun,crew-1,3,north,16:00,")
                .rows("work.csv", "winter,Mon-Sun,crew-1,2,trimmer,2")
                .table("tariffs.csv", """
                        tariff,season,days,from,to,price_per_kwh
                        flat,,Mon-Fri,00:00,07:00,0.074
                        flat,,Mon-Fri,19:00,24:00,0.074
                        flat,,Sat-Sun,00:00,24:00,0.074
                        flat,winter,Mon-Fri,07:00,11:00,0.151
                        flat,winter,Mon-Fri,11:00,17:00,0.102
                        flat,winter,Mon-Fri,17:00,19:00,0.151
                        flat,summer,Mon-Fri,07:00,11:00,0.102
                        flat,summer,Mon-Fri,11:00,17:00,0.151
                        flat,summer,Mon-Fri,17:00,19:00,0.102
                        """);
        var scenario = Planned.load(text);
        return new DepotProblems(scenario).of(scenario.depots().get(0));
    }

    private static double oneKilowatt(DayKind day) {
        return day.slices().stream()
                .mapToDouble(slice -> slice.hours() * slice.pricePerKwh().doubleValue())
                .sum();
    }

    @Test
    void aKilowattAllDayCostsWhatTheBoardsPricesGive() {
        DepotProblem problem = problem();

        assertThat(problem.days()).isNotEmpty();
        for (DayKind day : problem.days()) {
            boolean weekend = day.occurrences().get(0).day().compareTo(DayOfWeek.FRIDAY) > 0;
            assertThat(oneKilowatt(day)).as(day.label()).isCloseTo(weekend ? 1.776 : 2.406, within(CENT_TENTH));
        }
    }

    @Test
    void everySeasonDayBelongsToOneKindOfDay() {
        DepotProblem problem = problem();

        assertThat(problem.days().stream().flatMap(day -> day.occurrences().stream()))
                .hasSize(14)
                .doesNotHaveDuplicates();
        assertThat(problem.days().stream().mapToDouble(DayKind::daysPerYear).sum())
                .isCloseTo(7 * 52, within(CENT_TENTH));
    }

    @Test
    void slicesCoverTheCycleWithoutGaps() {
        for (DayKind day : problem().days()) {
            int at = 7 * 60;
            for (Slice slice : day.slices()) {
                assertThat(slice.fromMinute()).isEqualTo(at);
                at = slice.toMinute();
            }
            assertThat(at).isEqualTo(31 * 60);
        }
    }
}
