package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;

import depot.optimizer.fixture.ScenarioText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a single cell or setting may hold. */
class CellTest {
    private static ScenarioText weight(String text) {
        return tiny().replace("pack_types.csv", ",2.5,", "," + text + ",");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "heavy | not a number",
                "2.5 kg | not a number",
                "NaN | not a number",
                "Infinity | not a number",
                "0x10 | not a number",
                "1e400 | number too large",
                "1e99999 | not a number",
                "-1 | out of range",
                "0 | out of range",
                "10000.1 | out of range"
            })
    void aNumberIsWrittenPlainAndLiesInItsRange(String text, String message) {
        Breach.in(weight(text)).isOnlyError("pack_types.csv:2:weight_kg", text, message);
    }

    @Test
    void aDecimalCommaIsExplained() {
        Breach.in(weight("\"2,5\"")).isOnlyError("pack_types.csv:2:weight_kg", "2,5", "not a number");
    }

    @Test
    void goodNumbersAreTaken() {
        Breach.in(weight("2.50")).isNone();
        Breach.in(weight("25e-1")).isNone();
        Breach.in(weight(".5")).isNone();
        Breach.in(weight(" 10000 ")).isNone();
        Breach.in(tiny().replace("crews.csv", ",8,", ",8.0,")).isNone();
    }

    @Test
    void aCountIsWhole() {
        Breach.in(tiny().replace("crews.csv", ",8,", ",8.5,"))
                .isOnlyError("crews.csv:2:pack_places", "8.5", "not a whole number");
        Breach.in(tiny().replace("depots.csv", "400,3,63", "400,2,63"))
                .isOnlyError("depots.csv:2:supply_phases", "2", "not one of the allowed words");
    }

    @Test
    void aRequiredCellIsFilled() {
        Breach.in(tiny().replace("depots.csv", "North yard", " "))
                .isOnlyError("depots.csv:2:name", "", "the value is missing");
    }

    @ParameterizedTest
    @CsvSource({"7:5,not a time", "7.00,not a time", "07:60,not a time", "30:01,time too late", "99:00,time too late"})
    void aTimeIsWrittenAsHoursAndMinutes(String text, String message) {
        Breach.in(tiny().replace("stops.csv", "08:00", text)).isOnlyError("stops.csv:3:arrive", text, message);
    }

    @Test
    void timesOfBandsEndAtMidnight() {
        Breach.in(tiny().replace("tariffs.csv", "24:00", "24:01"))
                .isOnlyError("tariffs.csv:2:to", "24:01", "time too late");
    }

    @ParameterizedTest
    @CsvSource({
        "Monday to Friday,no such day",
        "Mon-Fri;Tue,Tue is there twice",
        "Mon-Wed-Fri,not a day",
        "Mon;,no such day"
    })
    void daysAreNamesListsAndRanges(String text, String message) {
        Breach.in(tiny().replace("work.csv", "Mon-Fri", text)).isOnlyError("work.csv:2:days", text, message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"mon-FRI", "Mon;Tue;Wed-Fri", "'\"Mon, Tue,Wed\"'", "Friday", "Fri-Fri"})
    void daysAreTakenInEachWriting(String text) {
        Breach.in(tiny().replace("work.csv", "Mon-Fri", text)).isNone();
    }

    @Test
    void keysHoldNoSigns() {
        Breach.in(tiny().replace("tools.csv", "trimmer", "=trimmer"))
                .hasError("tools.csv:2:tool", "=trimmer", "not a key");
        String longKey = "k".repeat(65);
        Breach.in(tiny().replace("tools.csv", "trimmer", longKey)).hasError("tools.csv:2:tool", longKey, "too long");
    }

    @Test
    void textsAreOnOneLine() {
        Breach.in(tiny().replace("depots.csv", "North yard", "\"North\nyard\""))
                .isOnlyError("depots.csv:2:name", "North\nyard", "line break");
    }

    @Test
    void choicesAreWords() {
        Breach.in(tiny().replace("charger_types.csv", ",no,", ",maybe,"))
                .isOnlyError("charger_types.csv:2:portable", "maybe", "not one of the allowed words");
        Breach.in(tiny().replace("charger_types.csv", ",no,", ",Yes,")).isNone();
    }

    @Test
    void positionsAreDegrees() {
        ScenarioText placed = tiny().column("depots.csv", "latitude", "91").column("depots.csv", "longitude", "-181");
        Breach.in(placed)
                .hasError("depots.csv:2:latitude", "91", "out of range")
                .hasError("depots.csv:2:longitude", "-181", "out of range")
                .count(2);
    }
}
