package depot.optimizer.dictionary;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import depot.optimizer.fixture.ScenarioText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DictionaryDocumentsTest {
    private static final Path INPUTS = Path.of("../../inputs");
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(DictionaryDocuments.documents().get("scenario.schema.json"), InputFormat.JSON);

    @Test
    void theCommittedDocumentsAreTheGeneratedOnes() throws IOException {
        for (Map.Entry<String, String> document :
                DictionaryDocuments.documents().entrySet()) {
            assertThat(Files.readString(INPUTS.resolve(document.getKey())))
                    .as(document.getKey())
                    .isEqualTo(document.getValue());
        }
    }

    @Test
    void theSchemaAcceptsGoodSettings() {
        assertThat(faults(ScenarioText.tiny())).isZero();
        assertThat(faults(ScenarioText.tiny()
                        .setting("shortage_cost_per_kwh", "12.5")
                        .setting("finance", "{\"tax_rate\": 0.25, \"depreciation\": \"fifths\"}")
                        .setting("solve", "{\"gap\": 0.01, \"handover_minutes\": 30}")))
                .isZero();
        assertThat(faults(ScenarioText.tiny().setting("shortage_cost_per_kwh", "\"forbid\"")))
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"demand_quantile\": 1",
                "\"demand_quantile\": \"0.9\"",
                "\"pack_health\": 0",
                "\"shortage_cost_per_kwh\": \"never\"",
                "\"shortage_cost_per_kwh\": -1",
                "\"solve\": {\"handover_minutes\": 7}",
                "\"solve\": {\"speed\": 7}",
                "\"solve\": {\"nodes\": 1.5}",
                "\"finance\": {\"tax_rate\": 1}",
                "\"finance\": {\"depreciation\": 5}",
                "\"colour\": \"red\""
            })
    void theSchemaRejectsBadSettings(String setting) {
        int colon = setting.indexOf(": ");
        String name = setting.substring(1, colon - 1);
        assertThat(faults(ScenarioText.tiny().setting(name, setting.substring(colon + 2))))
                .isPositive();
    }

    @Test
    void theSchemaRejectsMissingSettings() {
        assertThat(faults(ScenarioText.tiny().replace("scenario.json", "\"name\": \"Tiny\",", "")))
                .isPositive();
        assertThat(faults(ScenarioText.tiny().replace("scenario.json", "EUR", "euro")))
                .isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"starter/sweep.json", "fennmoor/sweep.json"})
    void theSchemaAcceptsTheSweepsOfTheDemo(String file) throws IOException {
        assertThat(sweepFaults(Files.readString(INPUTS.resolve(file)))).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"name\": \"s\"}",
                "{\"name\": \"s\", \"losses\": {\"one_pack_in\": 1}}",
                "{\"name\": \"s\", \"colour\": []}",
                "{\"name\": \"s\", \"cases\": [{\"name\": \"c\", \"changes\": [{\"change\": \"horizons\", \"value\": 2}]}]}",
                "{\"name\": \"s\", \"cases\": [{\"name\": \"c\", \"changes\": [{\"change\": \"horizon\", \"value\": 2.5}]}]}",
                "{\"name\": \"s\", \"cases\": [{\"name\": \"c\", \"changes\": [{\"change\": \"places\", \"value\": 2}]}]}",
                "{\"name\": \"s\", \"lines\": [{\"name\": \"l\", \"change\": \"pack_health\", \"values\": [0.5, 2]}]}",
                "{\"name\": \"s\", \"lines\": [{\"name\": \"l\", \"change\": \"pack_health\", \"values\": [0.5]}]}"
            })
    void theSchemaRejectsBadSweeps(String sweep) {
        assertThat(sweepFaults(sweep)).isPositive();
    }

    private static int sweepFaults(String sweep) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(DictionaryDocuments.documents().get("sweep.schema.json"), InputFormat.JSON)
                .validate(sweep, InputFormat.JSON)
                .size();
    }

    private static int faults(ScenarioText text) {
        return SCHEMA.validate(text.text("scenario.json"), InputFormat.JSON).size();
    }
}
