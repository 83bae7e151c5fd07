package depot.optimizer.tariff;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.fixture.ScenarioText;
import depot.optimizer.tariff.ImportRequest.Target;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Records that are no tariff: each fault is told with its line and place, several at once, never with an exception. */
class BadRecordsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "energyratestructure | [[{\"rate\": 0.1, \"max\": 500}, {\"rate\": 0.2}]] | 5 energyratestructure[0]: the price depends"
                        + " on how much is used: 2 tiers, 0.1, 0.2",
                "energyratestructure | [[{\"rate\": 0.1, \"adj\": -0.3}]] | 5 energyratestructure[0]: rate, adj and fuel adjustment come"
                        + " to less than nothing in Jan: -0.2",
                "energyratestructure | [[{}]] | 5 energyratestructure[0][0]: neither rate nor adj",
                "energyratestructure | [[]] | 5 energyratestructure[0]: the period has no tier, so it has no price",
                "energyratestructure | [[{\"rate\": 0.1, \"unit\": \"kVAh\"}]] | 5 energyratestructure[0][0].unit: the price is per kVAh",
                "energyratestructure | [[{\"rate\": \"0.1\"}]] | 5 energyratestructure[0][0].rate: not a number",
                "energyratestructure | [[{\"rate\": 1e999999999}]] | 5 energyratestructure[0][0].rate: not a usable number",
                "energyratestructure | [{\"rate\": 0.1}] | 5 energyratestructure[0]: not a list",
                "energyratestructure | {\"rate\": 0.1} | 5 energyratestructure: not a list",
                "energyratestructure | [[{\"rate\": 2000000}]] | 5 energyratestructure: 2000000 is out of range for price_per_kwh",
                "energyweekdayschedule | [[0,0,0]] | 6 energyweekdayschedule: there are 1 items, not 12",
                "energyweekdayschedule | [] | 1 energyweekdayschedule: the record does not have it",
                "fueladjustmentsmonthly | [0.01] | 8 fueladjustmentsmonthly: there are 1 items, not 12",
                "fixedchargefirstmeter | -3 | 8 fixedchargefirstmeter: a charge of less than nothing: -3",
                "fixedchargefirstmeter | 3 | 1 fixedchargeunits: the record does not have it",
                "flatdemandstructure | [[{\"rate\": 3}]] | 8 flatdemandmonths: the record does not have it, but has"
                        + " flatdemandstructure",
                "demandratestructure | [[{\"rate\": 3}]] | 8 demandweekendschedule: the record does not have it, but has"
                        + " demandratestructure",
            })
    void oneFieldIsWrong(String field, String json, String finding) {
        assertThat(new Import(folder).record(RateText.flat().with(field, json)).errors())
                .contains(finding);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1*24", "-1*24", "0.5*24"})
    void periodNumbersThatTheRecordDoesNotHave(String day) {
        assertThat(new Import(folder)
                        .record(RateText.flat().with("energyweekendschedule", RateText.year(day)))
                        .errors())
                .hasSize(12 * 24)
                .contains("7 energyweekendschedule[3][5]: the record has no such period");
    }

    @ParameterizedTest
    @CsvSource({"hp", "kW daily"})
    void otherUnitsOfDemand(String unit) {
        assertThat(new Import(folder)
                        .record(RateText.flat()
                                .with("flatdemandstructure", "[[{\"rate\": 3}]]")
                                .with("flatdemandmonths", "[0,0,0,0,0,0,0,0,0,0,0,0]")
                                .with("flatdemandunit", "\"" + unit + "\"")
                                .with("demandwindow", "12"))
                        .errors())
                .containsExactly(
                        "10 flatdemandunit: the demand price is per " + unit,
                        "11 demandwindow: demand is averaged over 12 minutes, which a scenario cannot say");
    }

    @Test
    void everythingIsToldAtOnce() {
        assertThat(new Import(folder)
                        .name("bad,name")
                        .scenario(ScenarioText.tiny())
                        .seasons("spring=Apr", "summer=Juni")
                        .record(RateText.flat()
                                .without("energyweekendschedule")
                                .with("fixedchargefirstmeter", "3")
                                .with("mincharge", "9"))
                        .errors())
                .containsExactly(
                        "0 : not a key",
                        "0 currency: the record's prices are in US dollars, the scenario's in another currency",
                        "0 : the scenario has no season \"spring\"",
                        "0 : not a season and its months",
                        "8 mincharge: a tariff of a scenario cannot say a least amount of the bill",
                        "1 energyweekendschedule: the record does not have it",
                        "1 fixedchargeunits: the record does not have it");
    }

    @Test
    void whatTheScenarioAndTheRecordLackIsToldTogether() {
        assertThat(new Import(folder)
                        .name("flat")
                        .scenario(ScenarioText.tiny())
                        .record(RateText.flat()
                                .with("energyratestructure", "[[{\"rate\": 0.2}], [{\"rate\": 0.3}]]")
                                .with("energyweekdayschedule", RateText.summer("1*24", "0*24")))
                        .errors())
                .containsExactly(
                        "0 tariff: the tariff is there already",
                        "0 currency: the record's prices are in US dollars, the scenario's in another currency",
                        "6 energyweekdayschedule: the prices differ by month: Jan-May, Oct-Dec; Jun-Sep");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "summer | not a season and its months",
                "summer= | not a season and its months",
                "summer=Jan-Feb-Mar | not a season and its months",
                "summer=Jan,Jan | not a season and its months",
                "spring=Jan | the scenario has no season \"spring\"",
            })
    void monthsOfSeasonsThatCannotBeUnderstood(String text, String message) {
        assertThat(new Import(folder).seasons(text).errors()).containsExactly("0 : " + message);
    }

    @Test
    void aMonthBelongsToOneSeasonAndEachSeasonHasMonths() {
        var two = ScenarioText.tiny().replace("scenario.json", "EUR", "USD").rows("seasons.csv", "winter,20");

        assertThat(new Import(folder)
                        .scenario(two)
                        .seasons("summer=Apr-Oct", "winter=Oct-Mar")
                        .errors())
                .containsExactly("0 : the season shares months with season \"summer\": Oct");
        assertThat(new Import(folder).scenario(two).seasons("summer=Apr-Oct").errors())
                .containsExactly("0 : the season has no months");
        assertThat(new Import(folder)
                        .scenario(two)
                        .seasons("summer=Apr", "summer=May", "winter=Jan")
                        .errors())
                .containsExactly("0 : the season is there twice");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | the file is empty",
                "<html></html> | not JSON",
                "{\"a\": 1, | not JSON",
                "{} {} | something follows the end of the JSON",
                "{\"items\": []} | the file has no record",
                "[1] | not a rate record",
                "7 | not a rate record",
                "{\"a\": 1, \"a\": 2} | the object has two members of this name",
                "{\"items\": [{\"label\": \"x\"}, {\"label\": \"y\"}]} | the file has 2 records; say which",
            })
    void filesThatHoldNoRecord(String text, String message) throws IOException {
        Path file = Files.writeString(folder.resolve("bad.json"), text);

        assertThat(run(file, Optional.empty()).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).startsWith(message));
    }

    @Test
    void aLabelChoosesOneOfSeveralRecords() throws IOException {
        RateText other = RateText.flat().with("label", "\"b\"").with("name", "\"Other\"");
        Path file = Files.writeString(
                folder.resolve("two.json"), "{\"items\": [" + RateText.flat().json() + "," + other.json() + "]}");

        assertThat(run(file, Optional.of("b")).rows().orElseThrow().source()).isEqualTo("Valley Power: Other");
        assertThat(run(file, Optional.of("c")).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.hint()).isEqualTo("labels: flat-1, b"));
        assertThat(run(folder.resolve("none.json"), Optional.empty()).findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).isEqualTo("there is no such file"));
    }

    private ImportedTariff run(Path file, Optional<String> label) {
        Path scenario =
                ScenarioText.tiny().replace("scenario.json", "EUR", "USD").write(folder.resolve("scenario"));
        return TariffImport.run(new ImportRequest(
                file,
                label,
                scenario,
                "new",
                List.of(),
                Optional.empty(),
                Set.of(),
                ImportRequest.KilovoltAmperes.REFUSED,
                Target.ADD));
    }
}
