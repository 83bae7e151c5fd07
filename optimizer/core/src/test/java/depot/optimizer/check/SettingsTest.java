package depot.optimizer.check;

import static depot.optimizer.fixture.ScenarioText.tiny;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import depot.optimizer.scenario.DepreciationShare;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code scenario.json} may hold. */
class SettingsTest {
    @TempDir
    Path folder;

    @Test
    void everySettingIsTaken() {
        Scenario scenario = ScenarioLoader.load(tiny().setting("demand_quantile", "0.95")
                        .setting("demand_spread", "0.2")
                        .setting("shortage_cost_per_kwh", "12.5")
                        .setting("$schema", "\"../scenario.schema.json\"")
                        .setting(
                                "solve",
                                "{\"gap\": 0, \"nodes\": 5, \"time_limit_seconds\": 1.5, \"threads\": 1, \"seed\": 7,"
                                        + " \"handover_minutes\": 30}")
                        .write(folder))
                .scenario()
                .orElseThrow();
        assertThat(scenario.demandQuantile()).isEqualTo(0.95);
        assertThat(scenario.shortageCostPerKwh()).contains(new BigDecimal("12.5"));
        assertThat(scenario.solve()).isEqualTo(new SolveSettings(0, 5, 1.5, 1, 7, 30));
    }

    @Test
    void financeIsAnObjectOfItsOwn() {
        Scenario scenario = ScenarioLoader.load(tiny().setting(
                                "finance",
                                "{\"tax_rate\": 0.25, \"depreciation\": \"halves\", \"petrol_price_per_litre\": 1.5,"
                                        + " \"petrol_price_growth\": -0.01, \"petrol_kg_co2_per_litre\": 2.5,"
                                        + " \"grid_kg_co2_per_kwh\": 0, \"carbon_price_per_tonne\": 55.5}")
                        .table("depreciation.csv", "schedule,year,share\nhalves,2,0.4\nhalves,1,0.6\n")
                        .write(folder))
                .scenario()
                .orElseThrow();
        assertThat(scenario.finance())
                .isEqualTo(new FinanceTerms(
                        0.25,
                        Optional.of("halves"),
                        Optional.of(new BigDecimal("1.5")),
                        -0.01,
                        2.5,
                        OptionalDouble.of(0),
                        Optional.of(new BigDecimal("55.5")),
                        List.of(new DepreciationShare("halves", 2, 0.4), new DepreciationShare("halves", 1, 0.6))));
        assertThat(scenario.finance().writeOffs()).containsExactly(0.6, 0.4);
    }

    @Test
    void withoutFinanceNothingIsTaxedAndPetrolHasItsCarbon() {
        Scenario scenario = ScenarioLoader.load(tiny().write(folder)).scenario().orElseThrow();
        assertThat(scenario.finance()).isEqualTo(FinanceTerms.NONE);
        // EPA-420-F-11-041 (seen): 8887 g of carbon dioxide per US gallon of 3.785411784 l.
        assertThat(scenario.finance().petrolKgCo2PerLitre()).isCloseTo(8.887 / 3.785411784, within(5e-5));
    }

    @Test
    void aShortageMayBeForbidden() {
        Breach.in(tiny().setting("shortage_cost_per_kwh", "\"forbid\"")).isNone();
        Breach.in(tiny().setting("shortage_cost_per_kwh", "\"12\""))
                .isOnlyError("scenario.json:8:shortage_cost_per_kwh", "12", "a number in quotes");
        Breach.in(tiny().setting("shortage_cost_per_kwh", "\"never\""))
                .isOnlyError("scenario.json:8:shortage_cost_per_kwh", "never", "not a number");
    }

    @Test
    void settingsHaveTheirTypesAndRanges() {
        Breach.in(tiny().replace("scenario.json", "\"EUR\"", "\"EURO\""))
                .isOnlyError("scenario.json:3:currency", "EURO", "no such currency");
        Breach.in(tiny().replace("scenario.json", "Europe/Berlin", "Berlin"))
                .isOnlyError("scenario.json:4:time_zone", "Berlin", "no such time zone");
        Breach.in(tiny().replace("scenario.json", "0.05", "5"))
                .isOnlyError("scenario.json:6:discount_rate", "5", "out of range");
        Breach.in(tiny().replace("scenario.json", "0.05", "1e400"))
                .isOnlyError("scenario.json:6:discount_rate", "1e400", "number too large");
        Breach.in(tiny().replace("scenario.json", "10", "10.5"))
                .isOnlyError("scenario.json:5:horizon_years", "10.5", "not a whole number");
        Breach.in(tiny().replace("scenario.json", "\"Tiny\"", "12"))
                .isOnlyError("scenario.json:2:name", "12", "not a text");
        Breach.in(tiny().replace("scenario.json", "\"depot\"", "\"everybody\""))
                .isOnlyError("scenario.json:7:pack_sharing", "everybody", "not one of the allowed words");
        Breach.in(tiny().setting("demand_quantile", "1"))
                .isOnlyError("scenario.json:8:demand_quantile", "1", "out of range");
        Breach.in(tiny().setting("finance", "{\"tax_rate\": 1}"))
                .isOnlyError("scenario.json:8:finance.tax_rate", "1", "out of range");
        Breach.in(tiny().setting("finance", "{\"petrol_price_per_litre\": \"1.5\"}"))
                .isOnlyError("scenario.json:8:finance.petrol_price_per_litre", "1.5", "a number in quotes");
        Breach.in(tiny().setting("finance", "{\"petrol_price\": 1.5}"))
                .isOnlyError("scenario.json:8:finance.petrol_price", "1.5", "no such setting");
        Breach.in(tiny().setting("solve", "{\"handover_minutes\": 7}"))
                .isOnlyError("scenario.json:8:solve.handover_minutes", "7", "not one of the allowed words");
    }

    @Test
    void unknownMissingAndDoubleSettingsAreReported() {
        Breach.in(tiny().setting("solve", "{\"speed\": 7}"))
                .isOnlyError("scenario.json:8:solve.speed", "7", "no such setting");
        Breach.in(tiny().setting("solve.gap", "0.1"))
                .isOnlyError("scenario.json:8:'solve.gap'", "0.1", "no such setting");
        Breach.in(tiny().replace("scenario.json", "  \"discount_rate\": 0.05,\n", ""))
                .isOnlyError("scenario.json:0:discount_rate", "", "the value is missing");
        Breach.in(tiny().setting("name", "\"Other\""))
                .isOnlyError("scenario.json:8:name", "Other", "the setting is there twice");
    }

    @Test
    void onlyPlainJsonIsTaken() {
        Breach.in(tiny().replace("scenario.json", "0.05", "NaN")).isOnlyError("scenario.json:6:", "", "not JSON");
        Breach.in(tiny().replace("scenario.json", "10,", "10, // years"))
                .isOnlyError("scenario.json:5:", "", "not JSON");
        Breach.in(tiny().table("scenario.json", "{\"name\": \"Tiny\"")).isOnlyError("scenario.json:1:", "", "not JSON");
        Breach.in(tiny().table("scenario.json", "[]")).isOnlyError("scenario.json:0:", "", "not a JSON object");
        Breach.in(tiny().table("scenario.json", "")).isOnlyError("scenario.json:0:", "", "empty");
        Breach.in(tiny().table("scenario.json", tiny().text("scenario.json") + "{}"))
                .isOnlyError("scenario.json:9:", "", "something follows");
    }

    @Test
    void deepNestingIsRefused() {
        String deep = "[".repeat(100_000) + "]".repeat(100_000);
        Breach.in(tiny().setting("name2", deep)).hasError("scenario.json:0:", "", "nesting depth");
        Breach.in(tiny().setting("solve", "{\"gap\": {\"value\": 1}}"))
                .isOnlyError("scenario.json:8:solve.gap", "{", "do not nest");
    }
}
