package depot.optimizer.report.compare;

import depot.optimizer.report.compare.ComparedRun.Item;
import depot.optimizer.report.compare.Comparison.Line;
import depot.optimizer.report.compare.Comparison.Part;
import depot.optimizer.report.compare.Comparison.Value;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** What is compared phase by phase: when each begins, what it spends and buys, who changes. Phases with the same id stand side by side. */
final class RolloutParts {

    static final String PURCHASES = "purchases_by_phase";

    private final List<ComparedRun> runs;
    private final String money;
    private final int coins;
    private final Set<String> phases = new LinkedHashSet<>();

    /**
     * @param coins decimals of amounts
     */
    RolloutParts(List<ComparedRun> runs, String money, int coins) {
        this.runs = runs;
        this.money = money;
        this.coins = coins;
        runs.forEach(run -> phases.addAll(run.phases().keySet()));
    }

    Part phases() {
        List<Line> lines = new ArrayList<>();
        for (String phase : phases) {
            lines.add(line(phase, "begins after", "years", 0, of -> Value.of(of.begins())));
            lines.add(line(phase, "spent", money, coins, of -> Value.of(of.spent())));
            lines.add(line(
                    phase,
                    "budget",
                    money,
                    coins,
                    of -> of.budget().isPresent() ? Value.of(of.budget()) : Value.none("no limit")));
            lines.add(line(phase, "crews with packs", "crews", 0, of -> Value.of(of.crewsWithPacks())));
            lines.add(line(phase, "crews on petrol", "crews", 0, of -> Value.of(of.crewsOnPetrol())));
        }
        return new Part("phases", "Phase by phase", lines);
    }

    private Line line(String phase, String what, String unit, int decimals, Function<RunPhase, Value> value) {
        return new Line(
                phase + ": " + what,
                unit,
                decimals,
                runs.stream()
                        .map(run -> Optional.ofNullable(run.phases().get(phase))
                                .map(value)
                                .orElse(Value.none("no such phase")))
                        .toList());
    }

    Part purchases() {
        List<Line> lines = new ArrayList<>();
        for (String phase : phases) {
            Set<Item> items = new TreeSet<>();
            runs.forEach(run -> items.addAll(bought(run, phase).keySet()));
            for (Item item : items) {
                lines.add(new Line(
                        "%s: %s %s".formatted(phase, item.kind(), item.name()),
                        "pieces to buy",
                        0,
                        runs.stream()
                                .map(run -> Value.of(bought(run, phase).getOrDefault(item, 0.0)))
                                .toList()));
            }
        }
        return new Part(PURCHASES, "What is bought when", lines);
    }

    private static Map<Item, Double> bought(ComparedRun run, String phase) {
        return run.boughtWhen().getOrDefault(phase, Map.of());
    }
}
