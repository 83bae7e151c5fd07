package depot.optimizer.report.compare;

import depot.optimizer.finance.FlowKind;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.report.compare.ComparedRun.Item;
import depot.optimizer.report.compare.Comparison.Line;
import depot.optimizer.report.compare.Comparison.Part;
import depot.optimizer.report.compare.Comparison.Value;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Figures;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is compared: what runs come to, what they buy, cost by kind and by year, and how near to their limits they are. */
final class ComparisonParts {

    private static final int RATE_DECIMALS = 6;

    private final List<ComparedRun> runs;
    private final String money;
    private final int coins;

    private ComparisonParts(List<ComparedRun> runs) {
        this.runs = runs;
        this.money = runs.stream().map(run -> run.plan().currency()).distinct().collect(Collectors.joining(" or "));
        this.coins = runs.stream()
                .mapToInt(
                        run -> Figures.decimals(Currency.getInstance(run.plan().currency())))
                .max()
                .orElse(2);
    }

    static List<Part> of(List<ComparedRun> runs) {
        ComparisonParts parts = new ComparisonParts(runs);
        List<Part> all = new ArrayList<>(List.of(parts.results(), parts.purchases()));
        if (runs.stream().anyMatch(run -> run.phases().size() > 1)) {
            RolloutParts rollout = new RolloutParts(runs, parts.money, parts.coins);
            all.add(rollout.phases());
            all.add(rollout.purchases());
        }
        all.addAll(List.of(parts.costs(), parts.years(), parts.risk()));
        return List.copyOf(all);
    }

    private Part results() {
        return new Part(
                "results",
                "What the plans come to",
                List.of(
                        amount(
                                runs.stream().anyMatch(run -> run.phases().size() > 1)
                                        ? "To pay when the first phase begins"
                                        : "To pay at once",
                                run -> Value.of(run.atOnce())),
                        amount("Present cost", run -> run.figure("present_cost")),
                        amount(
                                "No plan costs less than",
                                run -> Value.of(run.plan().certificate().bound())),
                        line(
                                "Gap",
                                "%",
                                3,
                                run -> Value.of(100 * run.plan().certificate().gap())),
                        amount("The same every year", run -> run.figure("yearly_cost")),
                        amount("Present cost of staying on petrol", run -> run.figure("petrol_present_cost")),
                        amount("Present value against petrol", run -> run.figure("net_present_value_against_petrol")),
                        line("Payback", "years", 2, run -> run.figure("payback")),
                        line("Payback with interest", "years", 2, run -> run.figure("discounted_payback")),
                        line(
                                "Internal rate of return",
                                "a year",
                                RATE_DECIMALS,
                                run -> run.figure("internal_rate_of_return")),
                        line("Horizon", "years", 0, run -> run.figure("horizon")),
                        line("Discount rate", "a year", RATE_DECIMALS, run -> run.figure("discount_rate"))));
    }

    private Part purchases() {
        TreeSet<Item> items = new TreeSet<>();
        runs.forEach(run -> items.addAll(run.bought().keySet()));
        List<Line> lines = new ArrayList<>();
        for (Item item : items) {
            String what = item.kind() + " " + item.name();
            lines.add(
                    line(what, "pieces to buy", 0, run -> Value.of(run.bought().getOrDefault(item, 0.0))));
        }
        return new Part("purchases", "What is bought", lines);
    }

    private Part costs() {
        List<Line> lines = new ArrayList<>();
        for (Category category : Category.values()) {
            if (runs.stream().anyMatch(run -> run.costs().containsKey(category))) {
                lines.add(amount(Words.of(category), run -> Value.of(run.costs().getOrDefault(category, 0.0))));
            }
        }
        if (runs.stream().anyMatch(run -> !run.plan().fleetCosts().isEmpty())) {
            lines.add(amount(Words.of(FlowKind.FLEET_PURCHASES), run -> Value.of(run.fleetCosts())));
        }
        lines.add(amount(
                "All",
                run -> Value.of(run.costs().values().stream()
                                .mapToDouble(Double::doubleValue)
                                .sum()
                        + run.fleetCosts())));
        return new Part("costs", "Present costs by kind", lines);
    }

    private Part years() {
        int last = runs.stream().mapToInt(run -> run.yearlyCosts().size()).max().orElse(0);
        List<Line> lines = new ArrayList<>();
        for (int year = 0; year < last; year++) {
            int at = year;
            String what = year == 0 ? "Year 0 (now)" : "Year " + year;
            lines.add(amount(
                    what,
                    run -> at < run.yearlyCosts().size()
                            ? Value.of(run.yearlyCosts().get(at))
                            : Value.none("beyond the horizon")));
        }
        return new Part("years", "Costs by year, not discounted", lines);
    }

    private Part risk() {
        return new Part(
                "risk",
                "How near to the limits",
                List.of(
                        line(
                                "Depot days",
                                "a year",
                                1,
                                run -> Value.of(run.risk().days())),
                        line(
                                "Of these met",
                                "a year",
                                1,
                                run -> Value.of(run.risk().metDays())),
                        line(
                                "Of these short as planned",
                                "a year",
                                1,
                                run -> Value.of(run.risk().shortDays())),
                        line(
                                "Of these with a broken rule",
                                "a year",
                                1,
                                run -> Value.of(run.risk().failedDays())),
                        line(
                                "Least energy left on a trip",
                                "Wh",
                                1,
                                run -> Value.of(run.risk().leastWattHours())),
                        line(
                                "Least time left before a pack is collected",
                                "min",
                                0,
                                run -> Value.of(run.risk().leastMinutes())),
                        line(
                                "Highest share of a circuit's or supply's limit",
                                "%",
                                1,
                                run -> Value.of(run.risk().highestShare()))));
    }

    private Line amount(String what, Function<ComparedRun, Value> value) {
        return line(what, money, coins, value);
    }

    private Line line(String what, String unit, int decimals, Function<ComparedRun, Value> value) {
        return new Line(what, unit, decimals, runs.stream().map(value).toList());
    }
}
