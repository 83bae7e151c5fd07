package depot.optimizer.tariff;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.scenario.PriceBand;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EnergyImportTest {
    private static final String THREE_PRICES = "[[{\"rate\": 0.15}], [{\"rate\": 0.25}], [{\"rate\": 0.40}]]";
    private static final ScenarioText TWO_SEASONS = ScenarioText.tiny()
            .replace("scenario.json", "EUR", "USD")
            .rows("seasons.csv", "winter,20")
            .table("tariffs.csv", """
                    tariff,season,days,from,to,price_per_kwh
                    flat,,Mon-Sun,00:00,24:00,0.30
                    """);

    @TempDir
    private Path folder;

    /**
     * A weekday row of 6 h at 0.15, 10 h at 0.25, 5 h at 0.40 and 3 h at 0.25 comes to 6.15 for 1 kW over the day (a schedule row as
     * published in the OpenEI utility rate database: format seen, sum recomputed: 0.90 + 2.50 + 2.00 + 0.75).
     */
    @Test
    void aKilowattOverADayCostsWhatTheRecordsRowComesTo() {
        List<PriceBand> bands = new Import(folder)
                .record(RateText.flat()
                        .with("energyratestructure", THREE_PRICES)
                        .with("energyweekdayschedule", RateText.year("0*6 1*10 2*5 1*3")))
                .rows()
                .bands();

        assertThat(oneKilowatt(bands, DayOfWeek.WEDNESDAY)).isEqualByComparingTo("6.15");
        // By hand: 24 h at 0.15.
        assertThat(oneKilowatt(bands, DayOfWeek.SUNDAY)).isEqualByComparingTo("3.60");
        assertThat(bands).hasSize(5);
    }

    @Test
    void rateAdjustmentAndFuelAdjustmentAddUp() {
        List<PriceBand> bands = new Import(folder)
                .record(RateText.flat()
                        .with("energyratestructure", "[[{\"rate\": 0.1, \"adj\": -0.02}]]")
                        .with("fueladjustmentsmonthly", "[" + "0.005,".repeat(11) + "0.005]"))
                .rows()
                .bands();

        assertThat(bands).singleElement().satisfies(band -> {
            assertThat(band.pricePerKwh()).isEqualByComparingTo("0.085");
            assertThat(band.season()).isEmpty();
            assertThat(band.days()).hasSize(7);
            assertThat(band.toMinute() - band.fromMinute()).isEqualTo(1440);
        });
    }

    @Test
    void sumsWorkedOutInBinaryAreRoundedToNineDecimals() {
        assertThat(new Import(folder)
                        .record(RateText.flat().with("energyratestructure", "[[{\"rate\": 0.16199999999999998}]]"))
                        .rows()
                        .bands())
                .extracting(PriceBand::pricePerKwh)
                .containsExactly(new BigDecimal("0.162"));
    }

    @Test
    void periodsWithOnePriceAreOneBand() {
        assertThat(new Import(folder)
                        .record(RateText.flat()
                                .with("energyratestructure", "[[{\"rate\": 0.2}], [{\"rate\": 0.15, \"adj\": 0.05}]]")
                                .with("energyweekdayschedule", RateText.year("0*6 1*18")))
                        .rows()
                        .bands())
                .hasSize(1);
    }

    @Test
    void seasonsTakeThePricesOfTheirMonths() {
        List<PriceBand> bands = new Import(folder)
                .scenario(TWO_SEASONS)
                .record(summerRecord())
                .seasons("winter=Oct-May", "summer=Jun-Sep")
                .rows()
                .bands();

        assertThat(bands).extracting(band -> band.season().orElse("all")).containsExactly("summer", "winter");
        assertThat(bands)
                .extracting(PriceBand::pricePerKwh)
                .containsExactly(new BigDecimal("0.25"), new BigDecimal("0.15"));
    }

    @Test
    void seasonsWithEqualPricesShareTheirRows() {
        assertThat(new Import(folder)
                        .scenario(TWO_SEASONS)
                        .seasons("winter=Oct-May", "summer=Jun-Sep")
                        .rows()
                        .bands())
                .singleElement()
                .satisfies(band -> assertThat(band.season()).isEmpty());
    }

    @Test
    void monthsOfOneSeasonThatDifferAreNamed() {
        assertThat(new Import(folder)
                        .scenario(TWO_SEASONS)
                        .record(summerRecord())
                        .seasons("winter=Nov-Apr", "summer=May-Oct")
                        .errors())
                .containsExactly(
                        "6 energyweekdayschedule: the months of season \"summer\" have different prices: May, Oct; Jun-Sep");
    }

    @Test
    void withoutSeasonsTheWholeYearHasToBeAlike() {
        assertThat(new Import(folder)
                        .scenario(TWO_SEASONS)
                        .record(summerRecord())
                        .errors())
                .containsExactly("6 energyweekdayschedule: the prices differ by month: Jan-May, Oct-Dec; Jun-Sep");
    }

    @Test
    void monthsOfNoSeasonAreToldAndMayDiffer() {
        Import part = new Import(folder).record(summerRecord()).seasons("summer=Jun-Sep");

        assertThat(part.rows().bands()).extracting(PriceBand::pricePerKwh).containsExactly(new BigDecimal("0.25"));
        assertThat(part.notices())
                .containsExactly("0 : months of no season, whose prices are not used: Jan-May, Oct-Dec");
    }

    @Test
    void otherCurrenciesNeedARateOfExchange() {
        Import euros = new Import(folder).scenario(ScenarioText.tiny());

        assertThat(euros.errors())
                .containsExactly(
                        "0 currency: the record's prices are in US dollars, the scenario's in another currency");
        assertThat(euros.perDollar("0.9").rows().bands())
                .extracting(PriceBand::pricePerKwh)
                .containsExactly(new BigDecimal("0.18"));
        assertThat(new Import(folder).perDollar("0.9").errors())
                .containsExactly("0 : the scenario counts in US dollars");
    }

    private static RateText summerRecord() {
        return RateText.flat()
                .with("energyratestructure", THREE_PRICES)
                .with("energyweekdayschedule", RateText.summer("1*24", "0*24"))
                .with("energyweekendschedule", RateText.summer("1*24", "0*24"));
    }

    private static BigDecimal oneKilowatt(List<PriceBand> bands, DayOfWeek day) {
        return bands.stream()
                .filter(band -> band.days().contains(day))
                .map(band ->
                        band.pricePerKwh().multiply(BigDecimal.valueOf((band.toMinute() - band.fromMinute()) / 60)))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
