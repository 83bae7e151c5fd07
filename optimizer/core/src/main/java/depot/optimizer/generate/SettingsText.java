package depot.optimizer.generate;

import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.ValueType.Kind;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The text of {@code scenario.json}. */
final class SettingsText {
    private static final Set<Kind> NUMBERS = Set.of(Kind.INTEGER, Kind.DECIMAL, Kind.MONEY);

    private final List<String> members = new ArrayList<>();
    private final Map<String, List<String>> groups = new LinkedHashMap<>();

    private SettingsText() {}

    static String of(Scenario scenario) {
        SettingsText text = new SettingsText();
        text.addScenario(scenario);
        if (!scenario.finance().equals(FinanceTerms.NONE)) {
            text.addFinance(scenario.finance());
        }
        text.addSolve(scenario.solve());
        text.groups.forEach((name, inner) ->
                text.members.add(quoted(name) + ": {\n    " + String.join(",\n    ", inner) + "\n  }"));
        return "{\n  " + String.join(",\n  ", text.members) + "\n}\n";
    }

    private void addScenario(Scenario scenario) {
        add(Settings.NAME, scenario.name());
        add(Settings.CURRENCY, scenario.currency());
        add(Settings.TIME_ZONE, scenario.timeZone());
        add(Settings.HORIZON_YEARS, scenario.horizonYears());
        add(Settings.DISCOUNT_RATE, scenario.discountRate());
        add(Settings.DEMAND_QUANTILE, scenario.demandQuantile());
        add(Settings.DEMAND_SPREAD, scenario.demandSpread());
        add(Settings.PACK_HEALTH, scenario.packHealth());
        add(Settings.PACK_SHARING, scenario.packSharing());
        addMember(Settings.SHORTAGE_COST_PER_KWH, shortage(scenario.shortageCostPerKwh()));
        add(Settings.ELECTRICITY_PRICE_GROWTH, scenario.electricityPriceGrowth());
    }

    private void addFinance(FinanceTerms terms) {
        add(Settings.TAX_RATE, terms.taxRate());
        add(Settings.DEPRECIATION, terms.depreciation());
        add(Settings.PETROL_PRICE_PER_LITRE, terms.petrolPricePerLitre());
        add(Settings.PETROL_PRICE_GROWTH, terms.petrolPriceGrowth());
        add(Settings.PETROL_KG_CO2_PER_LITRE, terms.petrolKgCo2PerLitre());
        add(Settings.GRID_KG_CO2_PER_KWH, SiteText.boxed(terms.gridKgCo2PerKwh()));
        add(Settings.CARBON_PRICE_PER_TONNE, terms.carbonPricePerTonne());
    }

    private void addSolve(SolveSettings solve) {
        add(Settings.GAP, solve.relativeGap());
        add(Settings.NODES, solve.nodeLimit());
        add(Settings.TIME_LIMIT_SECONDS, solve.timeLimitSeconds());
        add(Settings.THREADS, solve.threads());
        add(Settings.SEED, solve.seed());
        add(Settings.HANDOVER_MINUTES, solve.handoverMinutes());
    }

    private static String shortage(Optional<BigDecimal> price) {
        String forbid = Settings.SHORTAGE_COST_PER_KWH.type().choices().get(0);
        return price.map(BigDecimal::toPlainString).orElse(quoted(forbid));
    }

    private <T> void add(Field<T> field, T value) {
        String text = FieldText.of(field, value);
        addMember(field, NUMBERS.contains(field.type().kind()) ? text : quoted(text));
    }

    /** Leaves the setting out when there is no value. */
    private <T> void add(Field<T> field, Optional<T> value) {
        value.ifPresent(present -> add(field, present));
    }

    /** A name with a dot is a member of the object before the dot. */
    private void addMember(Field<?> field, String json) {
        int dot = field.name().indexOf('.');
        List<String> place =
                dot < 0 ? members : groups.computeIfAbsent(field.name().substring(0, dot), none -> new ArrayList<>());
        place.add(quoted(field.name().substring(dot + 1)) + ": " + json);
    }

    private static String quoted(String text) {
        StringBuilder json = new StringBuilder("\"");
        text.codePoints().forEach(character -> {
            if (character == '"' || character == '\\') {
                json.append('\\').appendCodePoint(character);
            } else if (character < ' ') {
                json.append("\\u%04x".formatted(character));
            } else {
                json.appendCodePoint(character);
            }
        });
        return json.append('"').toString();
    }
}
