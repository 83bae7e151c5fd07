package depot.optimizer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import depot.optimizer.check.LoadedScenario;
import depot.optimizer.check.ScenarioLoader;
import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportTariffCommandTest {

    @TempDir
    private Path folder;

    private Path scenario;
    private Path record;

    @BeforeEach
    void writeScenarioAndRecord() throws IOException {
        scenario = ScenarioText.tiny()
                .replace("scenario.json", "EUR", "USD")
                .replace("depots.csv", ",flat,", ",day-night,")
                .write(folder.resolve("tiny"));
        String year = Collections.nCopies(12, "[0,0,0,0,0,0,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,1,0,0]")
                .toString();
        record = Files.writeString(folder.resolve("rate.json"), """
                {"items": [{"label": "a1", "utility": "Valley Power", "name": "General service",
                  "energyratestructure": [[{"rate": 0.11, "adj": 0.01}], [{"rate": 0.24}]],
                  "energyweekdayschedule": %s,
                  "energyweekendschedule": %s,
                  "flatdemandstructure": [[{"rate": 8.5}]], "flatdemandmonths": [0,0,0,0,0,0,0,0,0,0,0,0],
                  "flatdemandunit": "kW", "demandwindow": 30,
                  "fixedchargefirstmeter": 365.25, "fixedchargeunits": "$/year"}]}
                """.formatted(year, year));
    }

    @Test
    void theCheckerAcceptsTheScenarioAfterwards() throws IOException {
        assertThat(ScenarioLoader.load(scenario).scenario()).isEmpty();
        String before = Files.readString(scenario.resolve("tariffs.csv"));

        CommandRun run = importTariff("--season", "summer=Mar-Oct");

        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out())
                .contains("day-night: 3 price bands, 1 a day, 8.5 a kW and month, averages over 30 minutes")
                .contains("Valley Power: General service", "optimizer check " + scenario);
        assertThat(scenario.resolve("tariffs.csv")).hasContent(before + """
                day-night,Mon-Sun,00:00,06:00,0.12
                day-night,Mon-Sun,06:00,22:00,0.24
                day-night,Mon-Sun,22:00,24:00,0.12
                """);
        LoadedScenario loaded = ScenarioLoader.load(scenario);
        assertThat(loaded.findings()).noneMatch(finding -> finding.message().contains("day-night"));
        assertThat(loaded.scenario().orElseThrow().tariffTerms())
                .singleElement()
                .satisfies(terms -> {
                    assertThat(terms.standingPerDay()).isEqualByComparingTo("1");
                    assertThat(terms.demandMinutes()).isEqualTo(30);
                });
        assertThat(hidden()).isEmpty();
    }

    @Test
    void aRefusalWritesNothingAndNamesPlaceValueAndHint() throws IOException {
        Map<String, String> before = texts();

        CommandRun run = importTariff("--season", "spring=Mar-Oct", "--exchange-rate", "0.9");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err())
                .contains(
                        "--season: error: the scenario has no season \"spring\" [spring=Mar-Oct]; hint: its seasons: summer")
                .contains("--exchange-rate: error: the scenario counts in US dollars [0.9]")
                .contains("2 errors; ", "nothing was written");
        assertThat(texts()).isEqualTo(before);
    }

    @Test
    void aSecondTimeNeedsReplaceAndThenChangesNothingElse() throws IOException {
        importTariff();
        Map<String, String> first = texts();

        CommandRun again = importTariff();
        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("tariffs.csv:tariff: error: the tariff is there already [day-night]");
        assertThat(importTariff("--replace").status()).isZero();
        assertThat(texts()).isEqualTo(first);
    }

    @Test
    void outLeavesTheScenarioAlone() throws IOException {
        Map<String, String> before = texts();
        Path out = folder.resolve("new/tables");

        assertThat(importTariff("--out", out.toString()).status()).isZero();
        assertThat(texts()).isEqualTo(before);
        assertThat(out.resolve("tariffs.csv"))
                .content()
                .startsWith("tariff,season,days")
                .contains("day-night,,Mon-Sun");
        assertThat(out.resolve("tariff_terms.csv")).content().endsWith("day-night,1,8.5,30\n");
        assertThat(importTariff("--out", out.toString()).status()).isEqualTo(1);
        assertThat(importTariff("--out", folder.resolve("x").toString(), "--replace")
                        .status())
                .isEqualTo(2);
    }

    @Test
    void aTableThatCannotBeReadIsRefused() throws IOException {
        Map<String, String> before = texts();
        Files.createDirectories(scenario.resolve("tariff_terms.csv/in the way"));

        assertThat(importTariff().status()).isNotZero();
        Files.delete(scenario.resolve("tariff_terms.csv/in the way"));
        Files.delete(scenario.resolve("tariff_terms.csv"));
        assertThat(texts()).isEqualTo(before);
    }

    private CommandRun importTariff(String... more) {
        List<String> line = new ArrayList<>(
                List.of("import-tariff", record.toString(), "--scenario", scenario.toString(), "--name", "day-night"));
        line.addAll(List.of(more));
        return CommandRun.with(CommandRun.none(), line.toArray(new String[0]));
    }

    private Map<String, String> texts() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (var files = Files.list(scenario)) {
            for (Path file : files.toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return texts;
    }

    private List<Path> hidden() throws IOException {
        try (var files = Files.list(scenario)) {
            return files.filter(file -> file.getFileName().toString().startsWith("."))
                    .toList();
        }
    }
}
