package depot.optimizer.replay;

import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.replay.CostCheck.CategoryCost;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Works the cost of a depot's plan out again and compares: unit prices line by line, costs by category, and the total. */
final class CostReplay {
    private static final BigDecimal HALF_A_CENT = new BigDecimal("0.005");
    private static final BigDecimal SHARE = new BigDecimal("1e-6");

    private final DepotTables tables;
    private final DepotPlan plan;
    private final EarlierPhases earlier;
    private final UnitPrices prices;
    private final List<String> differences = new ArrayList<>();

    private CostReplay(DepotTables tables, DepotPlan plan, EarlierPhases earlier) {
        this.tables = tables;
        this.plan = plan;
        this.earlier = earlier;
        this.prices = new UnitPrices(tables);
    }

    /** For a depot that the scenario does not have. */
    static CostCheck unknown(DepotPlan plan) {
        BigDecimal planned = BigDecimal.valueOf(plan.stop().certificate().cost());
        return new CostCheck(
                List.of(),
                BigDecimal.ZERO,
                planned,
                BigDecimal.ZERO,
                BigDecimal.ZERO,
                List.of("depot " + plan.depot() + " is not in the scenario"));
    }

    static CostCheck check(DepotTables tables, DepotPlan plan, EarlierPhases earlier, List<DayReplay> days) {
        return new CostReplay(tables, plan, earlier).check(days);
    }

    private CostCheck check(List<DayReplay> days) {
        plan.costs().forEach(this::line);
        List<CategoryCost> categories = categories();
        categories.forEach(this::category);
        BigDecimal total = categories.stream().map(CategoryCost::expected).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal planned = BigDecimal.valueOf(plan.stop().certificate().cost());
        if (!close(total, planned, Math.max(1, plan.costs().size()))) {
            differences.add("the plan costs " + cents(total) + ", its certificate says " + cents(planned));
        }
        PlanRates.energyPrices(plan, days, differences);
        PlanRates.wear(tables, plan, differences);
        return new CostCheck(
                categories,
                total,
                planned,
                perYear(days, DayReplay::energyCost),
                perYear(days, DayReplay::plannedEnergyCost),
                List.copyOf(differences));
    }

    private void line(CostLine line) {
        BigDecimal unit = BigDecimal.valueOf(line.presentCostPerUnit());
        BigDecimal product = unit.multiply(BigDecimal.valueOf(line.quantity()));
        String name = line.category() + " " + line.item();
        if (!close(product, BigDecimal.valueOf(line.presentCost()), 1)) {
            differences.add(name + ": quantity times cost per unit is " + cents(product) + ", not "
                    + cents(BigDecimal.valueOf(line.presentCost())));
        }
        List<BigDecimal> allowed = prices.of(line);
        if (line.quantity() != 0 && !allowed.isEmpty() && allowed.stream().noneMatch(p -> close(p, unit, 1))) {
            differences.add(name + ": one costs " + cents(allowed.get(0)) + " over the horizon, not " + cents(unit));
        }
    }

    private List<CategoryCost> categories() {
        Map<Category, BigDecimal> expected = new ExpectedCosts(tables, plan, earlier, prices).byCategory();
        Map<Category, BigDecimal> planned = new EnumMap<>(Category.class);
        plan.costs().forEach(l -> planned.merge(l.category(), BigDecimal.valueOf(l.presentCost()), BigDecimal::add));
        // A shortage that is forbidden has no price in the tables: the plan's own penalty stands.
        if (tables.scenario().shortageCostPerKwh().isEmpty() && planned.containsKey(Category.SHORTAGE)) {
            expected.put(Category.SHORTAGE, planned.get(Category.SHORTAGE));
        }
        List<CategoryCost> categories = new ArrayList<>();
        for (Category category : Category.values()) {
            BigDecimal right = expected.getOrDefault(category, BigDecimal.ZERO);
            BigDecimal said = planned.getOrDefault(category, BigDecimal.ZERO);
            if (right.signum() != 0 || said.signum() != 0) {
                categories.add(new CategoryCost(category, right, said));
            }
        }
        return List.copyOf(categories);
    }

    private void category(CategoryCost cost) {
        long lines = plan.costs().stream()
                .filter(l -> l.category() == cost.category())
                .count();
        if (!close(cost.expected(), cost.planned(), Math.max(1, lines))) {
            differences.add(cost.category() + " costs " + cents(cost.expected()) + ", the plan's lines say "
                    + cents(cost.planned()));
        }
    }

    private static boolean close(BigDecimal a, BigDecimal b, long lines) {
        BigDecimal allowed =
                HALF_A_CENT.multiply(BigDecimal.valueOf(lines)).max(a.abs().multiply(SHARE));
        return a.subtract(b).abs().compareTo(allowed) <= 0;
    }

    private static String cents(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    private static BigDecimal perYear(List<DayReplay> days, Function<DayReplay, BigDecimal> daily) {
        return days.stream()
                .map(day -> daily.apply(day).multiply(BigDecimal.valueOf(day.daysPerYear()), DecimalMoney.DIGITS))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
