package depot.optimizer.tariff;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.tariff.ImportRequest.Target;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of the tables: rows of other tariffs stay byte for byte. */
class TableEditTest {
    private static final RateText CHARGED =
            RateText.flat().with("fixedchargefirstmeter", "1.25").with("fixedchargeunits", "\"$/day\"");

    @TempDir
    private Path folder;

    @Test
    void newRowsGoToTheEndInTheOrderOfTheFilesColumns() {
        String own = "price_per_kwh , to,from,days,tariff\r\n\r\n\"0.30\", 24:00 ,00:00,\"Mon,Tue-Sun\",flat";

        assertThat(text("tariffs.csv", new Import(folder).scenario(usd().table("tariffs.csv", own))))
                .isEqualTo(own + "\r\n0.2,24:00,00:00,Mon-Sun,new\r\n");
    }

    @Test
    void aByteOrderMarkStays() {
        String own = "\uFEFF" + usd().text("tariffs.csv");

        assertThat(text("tariffs.csv", new Import(folder).scenario(usd().table("tariffs.csv", own))))
                .isEqualTo(own + "new,Mon-Sun,00:00,24:00,0.2\n");
    }

    @Test
    void aTariffThatIsThereIsReplacedOnRequestOnly() {
        ScenarioText text =
                usd().table("tariffs.csv", """
                        tariff,season,days,from,to,price_per_kwh
                        new,,Mon-Fri,00:00,24:00,0.1
                        flat,,Mon-Sun,00:00,24:00,0.30

                        new,,Sat-Sun,00:00,24:00,0.1
                        other,,Mon-Sun,00:00,24:00,0.5
                        """).table("tariff_terms.csv", "tariff,standing_per_day\nnew,9\nother,1\n");

        assertThat(new Import(folder).scenario(text).errors())
                .containsExactly("0 tariff: the tariff is there already", "0 tariff: the tariff is there already");
        Import replacing = new Import(folder).scenario(text).target(Target.REPLACE);
        assertThat(text("tariffs.csv", replacing)).isEqualTo("""
                tariff,season,days,from,to,price_per_kwh
                new,,Mon-Sun,00:00,24:00,0.2
                flat,,Mon-Sun,00:00,24:00,0.30

                other,,Mon-Sun,00:00,24:00,0.5
                """);
        assertThat(text("tariff_terms.csv", replacing)).isEqualTo("tariff,standing_per_day\nother,1\n");
        assertThat(text("tariff_terms.csv", replacing.record(CHARGED)))
                .isEqualTo("tariff,standing_per_day\nnew,1.25\nother,1\n");
    }

    @Test
    void termsAreWrittenOnlyWhenThereAreAny() {
        assertThat(new Import(folder).rows().files()).containsOnlyKeys("tariffs.csv");
        assertThat(text("tariff_terms.csv", new Import(folder).record(CHARGED)))
                .isEqualTo("tariff,standing_per_day,demand_price_per_kw_month,demand_minutes\nnew,1.25,,\n");
    }

    @Test
    void aColumnThatTheTableDoesNotHaveIsAskedFor() {
        assertThat(new Import(folder)
                        .scenario(usd().table("tariff_terms.csv", "tariff,demand_minutes\n"))
                        .record(CHARGED)
                        .errors())
                .containsExactly("1 standing_per_day: the tariff needs a column that the table does not have");
    }

    @Test
    void tablesOfTheirOwnHoldNothingElse() {
        assertThat(text("tariffs.csv", new Import(folder).target(Target.NEW_TABLES)))
                .isEqualTo("tariff,season,days,from,to,price_per_kwh\nnew,,Mon-Sun,00:00,24:00,0.2\n");
    }

    @Test
    void aScenarioWithoutTariffsGetsTheTable() {
        assertThat(text("tariffs.csv", new Import(folder).scenario(usd().without("tariffs.csv"))))
                .startsWith("tariff,season,days");
    }

    @Test
    void tablesThatCannotBeReadAreNotTouched() {
        assertThat(new Import(folder).scenario(usd().rows("tariffs.csv", "a,b")).errors())
                .containsExactly("3 : the row has 2 cells, the header has 5");
        assertThat(new Import(folder).scenario(usd().without("seasons.csv")).errors())
                .containsExactly("0 : the file is missing");
    }

    private static ScenarioText usd() {
        return ScenarioText.tiny().replace("scenario.json", "EUR", "USD");
    }

    private static String text(String file, Import run) {
        return run.rows().files().get(file);
    }
}
