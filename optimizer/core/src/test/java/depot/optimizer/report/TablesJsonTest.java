package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import depot.optimizer.fixture.DescribedTables;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.FleetReplay;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TablesJsonTest {

    private static final Scenario SCENARIO = ScenarioFixture.hostile();
    private static final Plan PLAN = PlanFixture.of(SCENARIO);
    private static final Path GUIDE = Path.of("..", "..", "outputs", "README.md");

    /** Endings of headings that stand for a unit. */
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("_wh", "Wh"),
            Map.entry("_kw", "kW"),
            Map.entry("_amps", "A"),
            Map.entry("_watts", "W"),
            Map.entry("_percent", "%"),
            Map.entry("_minutes", "min"),
            Map.entry("_time", "HH:MM"),
            Map.entry("_packs", "packs"),
            Map.entry("_pieces", "pieces"),
            Map.entry("_per_kwh", "currency/kWh"),
            Map.entry("_cost", "currency"));

    @TempDir
    private Path outputs;

    private Path run;

    @BeforeEach
    void writeRun() throws IOException {
        run = outputs.resolve("run");
        RunWriter.write(run, SCENARIO, PLAN, ReplayFixture.of(PLAN), PlanFixture.shortages(SCENARIO));
    }

    @Test
    void describesEveryTableAsItIs() throws IOException {
        assertThat(DescribedTables.faults(run)).isEmpty();
    }

    @Test
    void describesAPlanThatBreaksRulesAsWell() throws IOException {
        RunWriter.write(run, SCENARIO, PLAN, FleetReplay.run(SCENARIO, PLAN), List.of());

        assertThat(Files.readAllLines(run.resolve("violations.csv"))).hasSizeGreaterThan(1);
        assertThat(DescribedTables.faults(run)).isEmpty();
    }

    /** The comparison itself finds what is wrong, or the tests above would say nothing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "purchases.csv | yard,pack,B10,14, | yard,pack,B10,many, | is no integer",
                "purchases.csv | yard,pack, | yard,packs, | is not one of",
                "purchases.csv | yard,pack, | ,pack, | is blank",
                "placement.csv | ,yes,no,500 | ,maybe,no,500 | is no boolean",
                "trips.csv | 12:40 | noon | does not match",
                "costs.csv | present_cost_per_unit | cost_per_unit | has columns",
            })
    void theComparisonFindsWhatIsWrong(String file, String right, String wrong, String fault) throws IOException {
        String text = Files.readString(run.resolve(file));
        assertThat(text).contains(right);
        Files.writeString(run.resolve(file), text.replace(right, wrong));

        assertThat(DescribedTables.faults(run)).isNotEmpty().allMatch(any -> any.contains(fault));
    }

    @Test
    void everyColumnHasItsMeaningAndTheUnitOfItsHeading() throws IOException {
        for (JsonNode resource : resources()) {
            Set<String> names = new HashSet<>();
            for (JsonNode field : resource.get("schema").get("fields")) {
                String name = field.get("name").asText();
                assertThat(names.add(name)).as(name).isTrue();
                assertThat(field.get("description").asText()).as(name).isNotBlank();
                UNITS.forEach((ending, unit) -> {
                    boolean named = name.endsWith(ending) && !name.contains("_at_80_");
                    if (named && !field.get("type").asText().equals("boolean")) {
                        assertThat(field.path("unit").asText())
                                .as(resource.get("path").asText() + " " + name)
                                .isEqualTo(unit);
                    }
                });
            }
        }
    }

    @Test
    void theGuideListsEveryFileOfARun() throws IOException {
        String guide = Files.readString(GUIDE);
        try (var files = Files.list(run)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> !name.endsWith(".html")))
                    .isNotEmpty()
                    .allSatisfy(name -> assertThat(guide).contains("| " + name + " |"));
        }
    }

    private JsonNode resources() throws IOException {
        return new JsonMapper()
                .readTree(Files.readString(run.resolve("tables.json")))
                .get("resources");
    }
}
