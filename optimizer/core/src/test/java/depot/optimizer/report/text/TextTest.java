package depot.optimizer.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.plan.SeasonDay;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class TextTest {

    @Test
    void writesTimesPastMidnightWithTheDay() {
        assertThat(Clock.time(0)).isEqualTo("00:00");
        assertThat(Clock.time(405)).isEqualTo("06:45");
        assertThat(Clock.time(1439)).isEqualTo("23:59");
        assertThat(Clock.time(1440)).isEqualTo("00:00 +1");
        assertThat(Clock.time(2940)).isEqualTo("01:00 +2");
        assertThat(Clock.time(-60)).isEqualTo("23:00 -1");
    }

    @Test
    void writesNumbersTheSameWhateverTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertThat(Figures.read(1234567.891, 2)).isEqualTo("1,234,567.89");
            assertThat(Figures.plain(1234567.891, 1)).isEqualTo("1234567.9");
            assertThat(Figures.percent(0.8237)).isEqualTo("82.4 %");
            assertThat(Clock.time(1500)).isEqualTo("01:00 +1");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void showsNoNegativeZero() {
        assertThat(Figures.plain(-0.0001, 2)).isEqualTo("0");
        assertThat(Figures.read(-0.0001, 2)).isEqualTo("0.00");
        assertThat(Figures.plain(100, 2)).isEqualTo("100");
    }

    @Test
    void countsOneInTheSingular() {
        assertThat(Figures.count(0, "depot")).isEqualTo("0 depots");
        assertThat(Figures.count(1, "depot")).isEqualTo("1 depot");
        assertThat(Figures.count(21, "depot")).isEqualTo("21 depots");
        assertThat(Figures.count("1.5", "day")).isEqualTo("1.5 days");
    }

    @Test
    void roundsAmountsToTheSmallestCoin() {
        assertThat(new Amounts(Currency.getInstance("EUR")).rounded(1.005)).isEqualTo(new BigDecimal("1.01"));
        assertThat(new Amounts(Currency.getInstance("JPY")).showWithCode(new BigDecimal("1234.6")))
                .isEqualTo("JPY 1,235");
    }

    @Test
    void joinsDaysThatFollowEachOther() {
        assertThat(DayNames.of(List.of(
                        day("summer", DayOfWeek.MONDAY),
                        day("summer", DayOfWeek.WEDNESDAY),
                        day("summer", DayOfWeek.TUESDAY),
                        day("summer", DayOfWeek.SATURDAY),
                        day("winter", DayOfWeek.SATURDAY),
                        day("winter", DayOfWeek.SUNDAY))))
                .isEqualTo("summer Mon-Wed, Sat; winter Sat, Sun");
    }

    private static SeasonDay day(String season, DayOfWeek day) {
        return new SeasonDay(season, day);
    }
}
