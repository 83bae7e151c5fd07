package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;

class TariffRulesTest {
    private static ScenarioText bands(String... rows) {
        return tiny().rows("seasons.csv", "winter,20")
                .table("tariffs.csv", "tariff,season,days,from,to,price_per_kwh\n")
                .rows("tariffs.csv", rows);
    }

    @Test
    void bandsOfSeasonsAndDaysCoverTheWeek() {
        Breach.in(bands(
                        "flat,summer,Mon-Fri,00:00,12:00,0.3",
                        "flat,summer,Mon-Fri,12:00,24:00,0.3",
                        "flat,,Sat;Sun,00:00,24:00,0.2",
                        "flat,winter,Mon-Fri,00:00,24:00,0.4"))
                .isNone();
    }

    @Test
    void aGapIsToldOnceForItsDaysAndSeasons() {
        Breach.in(bands("flat,,Mon-Sun,00:00,07:00,0.3", "flat,,Mon-Sun,07:30,24:00,0.3"))
                .isOnlyError(
                        "tariffs.csv:2:to", "07:00", "no price from 07:00 to 07:30 on Mon-Sun (season summer, winter)");
        Breach.in(bands("flat,,Mon-Sun,00:30,24:00,0.3"))
                .isOnlyError("tariffs.csv:2:from", "00:30", "no price from 00:00 to 00:30");
        Breach.in(bands("flat,,Mon-Sun,00:00,23:59,0.3"))
                .isOnlyError("tariffs.csv:2:to", "23:59", "no price from 23:59 to 24:00");
    }

    @Test
    void aDayWithoutAnyBandIsAGap() {
        Breach.in(bands("flat,,Mon-Sat,00:00,24:00,0.3", "flat,winter,Sun,00:00,24:00,0.3"))
                .isOnlyError("tariffs.csv:2:days", "Mon-Sat", "no price on Sun (season summer)");
    }

    @Test
    void bandsDoNotOverlap() {
        Breach.in(bands("flat,,Mon-Sun,00:00,24:00,0.3", "flat,winter,Sat-Mon,06:00,22:00,0.4"))
                .isOnlyError(
                        "tariffs.csv:3:from",
                        "06:00",
                        "overlaps the band of line 2 (00:00 to 24:00) on Mon;Sat;Sun (season winter)");
    }

    @Test
    void aBandOverMidnightIsSplit() {
        Breach.in(bands("flat,,Mon-Sun,22:00,06:00,0.3", "flat,,Mon-Sun,06:00,22:00,0.3"))
                .isOnlyError("tariffs.csv:2:to", "06:00", "ends before it begins, at 22:00");
        Breach.in(bands("flat,,Mon-Sun,06:00,00:00,0.3")).isOnlyError("tariffs.csv:2:to", "00:00", "ends before");
    }

    @Test
    void aTariffWithABrokenRowIsNotCheckedFurther() {
        Breach.in(bands("flat,,Mon-Sun,00:00,12:00,0.3", "flat,,Mon-Sun,12:00,24:00,cheap"))
                .isOnlyError("tariffs.csv:3:price_per_kwh", "cheap", "not a number");
    }

    @Test
    void anUnusedTariffIsNoticed() {
        Breach.in(tiny().rows("tariffs.csv", "night,Mon-Sun,00:00,24:00,0.2"))
                .isOnlyNotice("tariffs.csv:3:tariff", "night", "no depot has this tariff");
    }

    @Test
    void termsBelongToATariff() {
        Breach.in(tiny().table("tariff_terms.csv", "tariff,demand_price_per_kw_month\nflat,9\n"))
                .isNone();
        Breach.in(tiny().table("tariff_terms.csv", "tariff,demand_minutes\nflat,7\n"))
                .isOnlyError("tariff_terms.csv:2:demand_minutes", "7", "not one of the allowed words");
    }
}
