package depot.optimizer.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import depot.optimizer.fixture.ScenarioEdit;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.Scenario;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** RFC 7946 (seen): a position is longitude, then latitude (3.1.1); no member crs (4); members of other names are allowed (6.1). */
class DepotsGeoJsonTest {

    private static final Scenario SCENARIO = ScenarioFixture.hostile();
    private static final Plan PLAN = PlanFixture.of(SCENARIO);

    @Test
    void depotsArePointsWithLongitudeFirst() throws IOException {
        JsonNode collection = written(SCENARIO.depots().stream()
                .map(depot -> at(depot, OptionalDouble.of(53.5), OptionalDouble.of(-8.25)))
                .toList());

        assertThat(collection.get("type").asText()).isEqualTo("FeatureCollection");
        assertThat(collection.has("crs")).isFalse();
        assertThat(collection.get("features")).hasSize(2);
        assertThat(collection.get("depots_without_coordinates")).isEmpty();
        JsonNode yard = collection.get("features").get(0);
        assertThat(yard.get("type").asText()).isEqualTo("Feature");
        assertThat(yard.get("id").asText()).isEqualTo("yard");
        assertThat(yard.get("geometry").get("type").asText()).isEqualTo("Point");
        assertThat(yard.get("geometry").get("coordinates").toString()).isEqualTo("[-8.25,53.5]");
    }

    /** Packs and chargers as RunWriterTest has them in purchases.csv: 14 and 4 packs, 3 chargers and one that is carried. */
    @Test
    void propertiesSayWhatTheDepotNeedsAndWhetherItIsProven() throws IOException {
        JsonNode collection = written(SCENARIO.depots().stream()
                .map(depot -> at(depot, OptionalDouble.of(0), OptionalDouble.of(0)))
                .toList());

        JsonNode yard = collection.get("features").get(0).get("properties");
        assertThat(yard.get("packs").intValue()).isEqualTo(18);
        assertThat(yard.get("chargers").intValue()).isEqualTo(4);
        assertThat(yard.get("currency").asText()).isEqualTo("EUR");
        // 150 weekdays of summer are met, 18 Saturdays of winter fail.
        assertThat(yard.get("days_met_per_year").doubleValue()).isEqualTo(150);
        assertThat(yard.get("days_per_year").doubleValue()).isEqualTo(168);
        assertThat(yard.get("proven").booleanValue()).isFalse();
        assertThat(yard.get("gap").doubleValue()).isBetween(0.0, 1.0);
        assertThat(collection
                        .get("features")
                        .get(1)
                        .get("properties")
                        .get("name")
                        .asText())
                .isEqualTo(ScenarioFixture.HOSTILE_DEPOT);
        double cost = 0;
        for (JsonNode feature : collection.get("features")) {
            cost += feature.get("properties").get("present_cost").doubleValue();
        }
        assertThat(cost).isEqualTo(12000);
    }

    @Test
    void depotsWithoutCoordinatesAreNamed() throws IOException {
        JsonNode collection = written(SCENARIO.depots().stream()
                .map(depot -> at(
                        depot,
                        OptionalDouble.of(1),
                        depot.id().equals("hill") ? OptionalDouble.empty() : OptionalDouble.of(2)))
                .toList());

        assertThat(collection.get("features")).hasSize(1);
        assertThat(collection.get("depots_without_coordinates").toString()).isEqualTo("[\"hill\"]");
    }

    private static JsonNode written(List<Depot> depots) throws IOException {
        Scenario placed = new ScenarioEdit(SCENARIO).depots(depots).scenario();
        return new JsonMapper().readTree(DepotsGeoJson.write(new Catalog(placed), PLAN, ReplayFixture.of(PLAN)));
    }

    private static Depot at(Depot depot, OptionalDouble latitude, OptionalDouble longitude) {
        return new Depot(
                depot.id(),
                depot.name(),
                depot.region(),
                latitude,
                longitude,
                depot.tariff(),
                depot.supplyVolts(),
                depot.supplyPhases(),
                depot.supplyAmps(),
                depot.places(),
                depot.staffedFromMinute(),
                depot.staffedToMinute(),
                depot.swapMinutes(),
                depot.supplyUpgradeAmps(),
                depot.supplyUpgradeCost());
    }
}
