package depot.optimizer.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.plan.SeasonDay;
import depot.optimizer.replay.PriceLine.Span;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prices over a cycle, and demand as it is billed. */
class TariffTest {
    /** Ontario Energy Board, from 1 November 2022 (seen): off 7.4, mid 10.2, on 15.1 cents. */
    private static final String THREE_PERIODS = """
            season winter weeks=26
            season summer weeks=26
            price 00:00 07:00 7.4 days=Mon-Fri
            price 19:00 24:00 7.4 days=Mon-Fri
            price 00:00 24:00 7.4 days=Sat-Sun
            price 07:00 11:00 15.1 days=Mon-Fri season=winter
            price 11:00 17:00 10.2 days=Mon-Fri season=winter
            price 17:00 19:00 15.1 days=Mon-Fri season=winter
            price 07:00 11:00 10.2 days=Mon-Fri season=summer
            price 11:00 17:00 15.1 days=Mon-Fri season=summer
            price 17:00 19:00 10.2 days=Mon-Fri season=summer
            """;

    @ParameterizedTest
    @CsvSource({
        "winter, TUESDAY, 240.6",
        "summer, TUESDAY, 240.6",
        "winter, SATURDAY, 177.6",
        "summer, SATURDAY, 177.6",
    })
    void oneKilowattForADayCostsWhatThePeriodsSay(String season, DayOfWeek day, BigDecimal cents) {
        assertThat(costOfOneKilowatt(prices(THREE_PERIODS, season, day))).isEqualByComparingTo(cents);
    }

    @Test
    void theNightAfterFridayHasSaturdaysPrices() {
        String weekend = """
                price 00:00 24:00 0.30 days=Mon-Fri
                price 00:00 24:00 0.10 days=Sat-Sun
                crew A
                stop A 1 D 06:00
                stop A 2 D 18:00
                """;

        PriceLine friday = prices(weekend, "year", DayOfWeek.FRIDAY);

        assertThat(friday.spans()).extracting(Span::fromMinute).containsExactly(6 * 60, 24 * 60);
        assertThat(friday.at(30 * 60 - 1)).hasValue(new BigDecimal("0.10"));
        assertThat(friday.at(30 * 60)).isEmpty();
        assertThat(prices(weekend, "year", DayOfWeek.SUNDAY).at(24 * 60)).hasValue(new BigDecimal("0.30"));
    }

    @ParameterizedTest
    @CsvSource({"MONDAY", "SATURDAY", "SUNDAY"})
    void aNightRateOnTheMetersClockLastsSevenHoursOnEachDay(DayOfWeek day) {
        // A meter that keeps winter time all year (seen): 00:00 to 07:00 is 7.0 h, also when clocks change.
        PriceLine line = prices("price 00:00 07:00 1\nprice 07:00 24:00 0\n", "year", day);

        assertThat(costOfOneKilowatt(line)).isEqualByComparingTo("7.0");
    }

    @ParameterizedTest
    @CsvSource({"15, 10000", "30, 5000", "60, 2500"})
    void billedDemandIsAnAverage(int minutes, double watts) {
        // Utility training text (rule seen, recomputed): 10 kW in one quarter of an hour, 0 kW beside it.
        double[] load = new double[BaseLoads.DAY];
        Arrays.fill(load, 600, 615, 10_000);

        assertThat(DemandMeter.highestAverage(load, 0, minutes)).isCloseTo(watts, within(1e-9));
    }

    @Test
    void intervalsOfTheMeterFollowTheClockNotTheCycle() {
        double[] load = new double[BaseLoads.DAY];
        // The cycle starts at 06:45: its first quarter of an hour shares an interval with its last.
        Arrays.fill(load, 0, 15, 10_000);
        Arrays.fill(load, 1425, 1440, 6_000);

        assertThat(DemandMeter.highestAverage(load, 6 * 60 + 45, 30)).isCloseTo(8_000, within(1e-9));
    }

    @Test
    void demandCountsAboveTheBaseLoadsOwnPeak() {
        String terms = Replays.SCENARIO + "terms demand=10 minutes=30\nbase 03:00 04:00 days=Wed amps=1\n";

        // The charger draws 75 W; 230 W of base load on Wednesdays would be billed anyway.
        assertThat(Replays.run(terms, Replays.PLAN).days().get(0).demandKw()).isZero();
        assertThat(Replays.run(terms.replace("amps=1\n", "amps=0.1\n"), Replays.PLAN)
                        .days()
                        .get(0)
                        .demandKw())
                .isCloseTo(0.075 - 0.023, within(1e-9));
    }

    @Test
    void demandThatThePlanDoesNotPayForBreaksARule() {
        String terms = Replays.SCENARIO + "terms demand=10 minutes=30\nbase 03:00 04:00 days=Wed amps=0.1\n";

        assertThat(Replays.kinds(Replays.run(terms, Replays.PLAN + "demand 0.04\n")))
                .containsOnly(Violation.Kind.DEMAND);
        assertThat(Replays.kinds(Replays.run(terms, Replays.PLAN + "demand 0.053\n")))
                .isEmpty();
    }

    private static PriceLine prices(String text, String season, DayOfWeek day) {
        Scenario scenario = ScenarioText.read(text);
        return PriceLine.of(
                DepotTables.of(scenario, PlanText.read(Replays.PLAN)).orElseThrow(), new SeasonDay(season, day));
    }

    private static BigDecimal costOfOneKilowatt(PriceLine line) {
        return line.spans().stream()
                .map(s -> s.pricePerKwh()
                        .multiply(BigDecimal.valueOf(s.toMinute() - s.fromMinute()))
                        .divide(BigDecimal.valueOf(60), DecimalMoney.DIGITS))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
