package depot.optimizer.tariff;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.scenario.TariffTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChargesImportTest {
    private static final String ALL_YEAR = "[0,0,0,0,0,0,0,0,0,0,0,0]";

    @TempDir
    private Path folder;

    /** Rate 0.453 and adjustment 6.0012 a kVA in every month, 6.4542 together: a record of the OpenEI database (seen, recomputed). */
    @Test
    void rateAndAdjustmentOfADemandChargeAddUp() {
        RateText record = RateText.flat()
                .with("flatdemandstructure", "[[{\"rate\": 0.453, \"adj\": 6.0012}]]")
                .with("flatdemandmonths", ALL_YEAR)
                .with("flatdemandunit", "\"kVA\"")
                .with("demandwindow", "30");

        assertThat(new Import(folder).record(record).errors())
                .containsExactly("10 flatdemandunit: the demand price is per kVA");
        TariffTerms terms = new Import(folder).record(record).kvaAsKw().rows().terms();
        assertThat(terms.demandPricePerKwMonth()).isEqualByComparingTo("6.4542");
        assertThat(terms.demandMinutes()).isEqualTo(30);
        assertThat(terms.standingPerDay()).isZero();
    }

    @Test
    void aDemandChargeThatHoldsAtAllTimesIsAddedToTheFlatOne() {
        RateText record = RateText.flat()
                .with("flatdemandstructure", "[[{\"rate\": 4}]]")
                .with("flatdemandmonths", ALL_YEAR)
                .with("flatdemandunit", "\"kW\"")
                .with("demandratestructure", "[[{\"rate\": 9}], [{\"rate\": 2.5}]]")
                .with("demandweekdayschedule", RateText.year("1*24"))
                .with("demandweekendschedule", RateText.year("1*24"))
                .with("demandrateunit", "\"kW\"");

        assertThat(new Import(folder).record(record).rows().terms().demandPricePerKwMonth())
                .isEqualByComparingTo("6.5");
        assertThat(new Import(folder).record(record).notices())
                .containsExactly("1 demandwindow: the record does not say over how many minutes demand is averaged");
    }

    /** Each period of such a charge is billed for its own peak, so two periods at one price are not one charge either. */
    @ParameterizedTest
    @CsvSource({"0", "9"})
    void aDemandChargeByTimeOfDayIsRefused(String otherPrice) {
        RateText record = RateText.flat()
                .with("demandratestructure", "[[{\"rate\": 9}], [{\"rate\": " + otherPrice + "}]]")
                .with("demandweekdayschedule", RateText.summer("1*8 0*16", "1*24"))
                .with("demandweekendschedule", RateText.year("1*24"))
                .with("demandrateunit", "\"kW\"")
                .with("demandwindow", "15");

        assertThat(new Import(folder).record(record).errors())
                .contains("8 demandratestructure: the demand charge depends on the time of day in Jun-Sep");
    }

    @Test
    void aDemandPriceThatDiffersByMonthIsRefusedUnlessTheOtherMonthsAreNotUsed() {
        RateText record = RateText.flat()
                .with("flatdemandstructure", "[[{\"rate\": 4}], [{\"rate\": 7}]]")
                .with("flatdemandmonths", "[0,0,0,0,0,1,1,1,1,0,0,0]")
                .with("flatdemandunit", "\"kW\"")
                .with("demandwindow", "15");

        assertThat(new Import(folder).record(record).errors())
                .containsExactly(
                        "8 flatdemandstructure: the demand price differs by month (Jan-May, Oct-Dec: 4; Jun-Sep: 7)");
        assertThat(new Import(folder)
                        .record(record)
                        .seasons("summer=Jun-Sep")
                        .rows()
                        .terms()
                        .demandPricePerKwMonth())
                .isEqualByComparingTo("7");
    }

    /** A year of 365.25 days, as plans count it: what the year comes to is what the record says. */
    @ParameterizedTest
    @CsvSource({"$/day, 1.5, 547.875", "$/month, 702.22, 8426.64", "$/year, 730.5, 730.5"})
    void aStandingChargeComesToTheSameInAYear(String unit, String charge, String perYear) {
        BigDecimal perDay = new Import(folder)
                .record(RateText.flat()
                        .with("fixedchargefirstmeter", charge)
                        .with("fixedchargeunits", "\"" + unit + "\""))
                .rows()
                .terms()
                .standingPerDay();

        assertThat(perDay.multiply(new BigDecimal("365.25")).setScale(5, RoundingMode.HALF_UP))
                .isEqualByComparingTo(perYear);
    }

    @Test
    void theStandingChargeOfVersionThreeIsMonthly() {
        assertThat(new Import(folder)
                        .record(RateText.flat().with("fixedmonthlycharge", "30.4375"))
                        .rows()
                        .terms()
                        .standingPerDay())
                .isEqualByComparingTo("1");
    }

    @Test
    void whatATariffCannotSayIsRefusedAllAtOnceUnlessItIsLeftOut() {
        RateText record = RateText.flat()
                .with("energyratestructure", "[[{\"rate\": 0.2, \"sell\": 0.05}]]")
                .with("coincidentratestructure", "[[{\"rate\": 3}]]")
                .with("demandratchetpercentage", "[0,0,0,0,0,0.8,0,0,0,0,0,0]")
                .with("demandreactivepowercharge", "0.3")
                .with("mincharge", "20");

        assertThat(new Import(folder).record(record).errors())
                .containsExactly(
                        "5 energyratestructure: a tariff of a scenario cannot say prices for energy fed back to the grid",
                        "8 coincidentratestructure: a tariff of a scenario cannot say a charge for the draw at the time of"
                                + " the grid's own peak",
                        "9 demandratchetpercentage: a tariff of a scenario cannot say demand that is billed in later months"
                                + " too",
                        "10 demandreactivepowercharge: a tariff of a scenario cannot say a charge for reactive power",
                        "11 mincharge: a tariff of a scenario cannot say a least amount of the bill");
        Import leftOut = new Import(folder).record(record);
        for (RecordPart part : RecordPart.values()) {
            leftOut.without(part);
        }
        assertThat(leftOut.rows().bands()).hasSize(1);
        assertThat(leftOut.notices()).hasSize(5).allMatch(notice -> notice.endsWith("is left out"));
    }

    @Test
    void partsThatComeToNothingAreNoObstacle() {
        assertThat(new Import(folder)
                        .record(RateText.flat()
                                .with("energyratestructure", "[[{\"rate\": 0.2, \"sell\": 0}]]")
                                .with("demandratchetpercentage", ALL_YEAR)
                                .with("demandratestructure", "[[{\"rate\": 0}], [{\"rate\": 0}]]")
                                .with("demandweekdayschedule", RateText.year("0*12 1*12"))
                                .with("demandweekendschedule", RateText.year("0*24"))
                                .with("demandrateunit", "\"hp\"")
                                .with("flatdemandstructure", "[]")
                                .with("mincharge", "null"))
                        .errors())
                .isEmpty();
    }
}
