package depot.optimizer.report.page;

import depot.optimizer.finance.FlowKind;
import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.FleetCost;
import depot.optimizer.plan.Plan;
import depot.optimizer.report.table.DepotCost;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Costs by category and by line. Sums are rounded once, as everywhere else; lines shown may differ from them by their last digit. */
final class CostViews {

    private CostViews() {}

    static BigDecimal total(Amounts amounts, DepotPlan plan) {
        return amounts.rounded(DepotCost.present(plan));
    }

    static BigDecimal total(Amounts amounts, List<DepotPlan> plans) {
        return amounts.rounded(plans.stream().mapToDouble(DepotCost::present).sum());
    }

    /** The fleet's whole cost. */
    static BigDecimal total(Amounts amounts, Plan plan) {
        return amounts.rounded(
                plan.depots().stream().mapToDouble(DepotCost::present).sum() + fleetCosts(plan));
    }

    /** What the fleet pays beside its depots: spare pieces less quantity reductions. */
    static double fleetCosts(Plan plan) {
        return plan.fleetCosts().stream().mapToDouble(FleetCost::presentCost).sum();
    }

    /** One row per category that costs something, with its share and a bar. */
    static TableView byCategory(String id, String caption, Amounts amounts, List<DepotPlan> plans) {
        return table(id, caption, amounts, sums(plans), total(amounts, plans));
    }

    /** The same for the whole fleet, with what it pays beside its depots. */
    static TableView ofFleet(String id, String caption, Amounts amounts, Plan plan) {
        Map<String, Double> sums = sums(plan.depots());
        if (!plan.fleetCosts().isEmpty()) {
            sums.put(Words.of(FlowKind.FLEET_PURCHASES), fleetCosts(plan));
        }
        return table(id, caption, amounts, sums, total(amounts, plan));
    }

    private static Map<String, Double> sums(List<DepotPlan> plans) {
        Map<Category, Double> byCategory = new EnumMap<>(Category.class);
        for (DepotPlan plan : plans) {
            plan.costs().forEach(line -> byCategory.merge(line.category(), line.presentCost(), Double::sum));
        }
        Map<String, Double> sums = new LinkedHashMap<>();
        byCategory.forEach((category, sum) -> sums.put(Words.of(category), sum));
        return sums;
    }

    private static TableView table(
            String id, String caption, Amounts amounts, Map<String, Double> sums, BigDecimal sum) {
        double total = sum.doubleValue();
        double largest =
                sums.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        TableView.Builder table = TableView.of(id, caption)
                .words("Kind of cost")
                .numbers("Present cost (" + amounts.code() + ")", "Share of the cost")
                .bars("Drawn to scale");
        sums.forEach((kind, cost) -> table.row(List.of(
                Cell.text(kind),
                Cell.text(amounts.show(amounts.rounded(cost))),
                Cell.text(total == 0 ? "" : Figures.percent(cost / total)),
                Cell.bar(largest <= 0 ? 0 : cost / largest))));
        return table.total("All", amounts.show(sum), total == 0 ? "" : Figures.percent(1), "")
                .build();
    }

    /** Every line of a depot's cost. */
    static TableView lines(String id, Amounts amounts, DepotPlan plan) {
        TableView.Builder table = TableView.of(id, "Present cost of this depot, line by line")
                .words("Kind of cost", "For")
                .numbers("Quantity")
                .words("Unit")
                .numbers("Present cost per unit (" + amounts.code() + ")", "Present cost (" + amounts.code() + ")");
        for (CostLine line : plan.costs()) {
            table.row(
                    Words.of(line.category()),
                    line.item(),
                    Figures.plain(line.quantity(), 3),
                    line.unit(),
                    Figures.read(line.presentCostPerUnit(), 4),
                    amounts.show(amounts.rounded(line.presentCost())));
        }
        return table.total("All", "", "", "", "", amounts.show(total(amounts, plan)))
                .build();
    }
}
