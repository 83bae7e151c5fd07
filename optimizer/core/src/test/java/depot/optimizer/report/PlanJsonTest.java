package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import depot.optimizer.plan.Certificate;
import depot.optimizer.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanJsonTest {

    private static final Plan PLAN = PlanFixture.of(ScenarioFixture.hostile());

    @TempDir
    private Path folder;

    @Test
    void comesBackAsItWas() throws IOException {
        assertThat(read(PlanJson.write(PLAN))).usingRecursiveComparison().isEqualTo(PLAN);
    }

    @Test
    void writesTheSameBytesAgain() throws IOException {
        String first = PlanJson.write(PLAN);

        assertThat(PlanJson.write(read(first)))
                .isEqualTo(first)
                .doesNotContain("\r")
                .endsWith("}\n");
        assertThat(first.indexOf("depots.csv")).isLessThan(first.indexOf("stops.csv"));
    }

    @Test
    void refusesANumberThatIsNotFinite() {
        Plan broken = new Plan(
                1,
                "x",
                "EUR",
                PLAN.inputHashes(),
                "s",
                PLAN.settings(),
                new Certificate(Double.NaN, 0, 0, false),
                PLAN.depots());

        assertThatThrownBy(() -> PlanJson.write(broken))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a number is NaN");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"formatVersion\": 4|\"formatVersion\": 2|line 2, column 20: formatVersion is 2, and this version reads 4 only",
                "\"formatVersion\": 4|\"formatVersion\": \"4\"|line 2, column 20: formatVersion is 4",
                "\"formatVersion\": 4,||formatVersion is missing",
                "\"currency\": \"EUR\"|\"currency\": \"EUR|line 4, column",
                "\"currency\": \"EUR\"|\"currency\": null|line 4, column",
                "\"currency\": \"EUR\"|\"currency\": \"EUR\", \"colour\": 3|line 4, column 22: no field \"colour\" is known here",
                "\"currency\": \"EUR\",||the field \"currency\" is missing",
                "\"supplyUpgraded\": false|\"supplyUpgraded\": \"maybe\"|At depots[0].supplyUpgraded",
                "\"outlet\": 1|\"outlet\": 1.5|At depots[0].chargers[0].outlet",
                "\"level\": \"FULL\"|\"level\": \"HALF\"|At depots[0].days[0].loads[0].packs[0].level",
            })
    void refusesWhatIsNoPlan(String from, String to, String message) {
        String text = PlanJson.write(PLAN);
        int at = text.indexOf(from);
        String broken = text.substring(0, at) + (to == null ? "" : to) + text.substring(at + from.length());

        assertThatThrownBy(() -> read(broken))
                .isInstanceOf(UnreadablePlanException.class)
                .hasMessageContaining(message)
                .hasMessageContaining("plan.json, line ")
                .hasMessageNotContaining("depot.optimizer")
                .hasMessageNotContaining("java.")
                .hasMessageNotContaining("`")
                .hasMessageNotContaining("Feature");
    }

    @Test
    void refusesWhatIsCutShortEmptyOrFollowedByMore() {
        String text = PlanJson.write(PLAN);

        for (String broken : new String[] {
            "",
            "null",
            "[]",
            "7",
            "\u0000",
            "{",
            "{}",
            text.substring(0, text.length() / 2),
            text + "{}",
            "[".repeat(100_000),
            "{\"a\":".repeat(5000),
        }) {
            assertThatThrownBy(() -> read(broken))
                    .isInstanceOf(UnreadablePlanException.class)
                    .hasMessageContaining("plan.json")
                    .hasMessageNotContaining("Feature");
        }
    }

    @Test
    void refusesValuesThatNoReaderCanUse() {
        String text = PlanJson.write(PLAN);

        assertThatThrownBy(() -> read(text.replace("\"EUR\"", "\"euros\"")))
                .isInstanceOf(UnreadablePlanException.class)
                .hasMessageContaining("currency \"euros\" is no ISO 4217 code");
        assertThatThrownBy(() -> read(text.replace("\"handoverMinutes\": 15", "\"handoverMinutes\": 0")))
                .isInstanceOf(UnreadablePlanException.class)
                .hasMessageContaining("settings.handoverMinutes is 0");
    }

    @Test
    void saysWhenThereIsNoFile() {
        assertThatThrownBy(() -> PlanJson.read(folder.resolve("none.json")))
                .isInstanceOf(UnreadablePlanException.class)
                .hasMessageContaining("There is no file");
        assertThatThrownBy(() -> PlanJson.read(folder))
                .isInstanceOf(UnreadablePlanException.class)
                .hasMessageContaining("it is a folder");
    }

    private Plan read(String text) throws IOException {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, text);
        return PlanJson.read(file);
    }
}
