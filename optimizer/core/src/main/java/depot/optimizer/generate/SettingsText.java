package depot.optimizer.generate;

import depot.optimizer.dictionary.Field;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.dictionary.ValueType.Kind;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.SolveSettings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The text of {@code scenario.json}. */
final class SettingsText {
    private static final String GROUP = "solve.";
    private static final Set<Kind> NUMBERS = Set.of(Kind.INTEGER, Kind.DECIMAL, Kind.MONEY);

    private final List<String> members = new ArrayList<>();
    private final List<String> solveMembers = new ArrayList<>();

    private SettingsText() {}

    static String of(Scenario scenario) {
        SettingsText text = new SettingsText();
        text.addScenario(scenario);
        text.addSolve(scenario.solve());
        String solve = "\"solve\": {\n    " + String.join(",\n    ", text.solveMembers) + "\n  }";
        text.members.add(solve);
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

    private void addMember(Field<?> field, String json) {
        if (field.name().startsWith(GROUP)) {
            solveMembers.add(quoted(field.name().substring(GROUP.length())) + ": " + json);
        } else {
            members.add(quoted(field.name()) + ": " + json);
        }
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
