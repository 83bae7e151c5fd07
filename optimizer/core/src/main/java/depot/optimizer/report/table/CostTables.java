package depot.optimizer.report.table;

import depot.optimizer.plan.CostLine;
import depot.optimizer.plan.DayPlan;
import depot.optimizer.plan.DepotPlan;
import depot.optimizer.plan.EnergyUse;
import depot.optimizer.plan.Plan;
import depot.optimizer.replay.CostCheck;
import depot.optimizer.replay.DepotReplay;
import depot.optimizer.replay.ReplayReport;
import depot.optimizer.report.text.DayNames;
import depot.optimizer.report.text.Figures;
import java.math.BigDecimal;
import java.util.Currency;

/** What it costs: costs.csv, energy.csv and cost_check.csv. */
public final class CostTables {

    private CostTables() {}

    /** costs.csv: the lines that add up to the plan's cost, as present costs over the horizon. */
    public static CsvTable costs(Plan plan) {
        int decimals = Figures.decimals(Currency.getInstance(plan.currency()));
        CsvTable table = new CsvTable(
                "costs.csv",
                "depot",
                "category",
                "item",
                "quantity",
                "unit",
                "present_cost_per_unit",
                "present_cost",
                "currency");
        for (DepotPlan depot : plan.depots()) {
            for (CostLine line : depot.costs()) {
                table.row(row -> row.text(depot.depot())
                        .text(Words.of(line.category()))
                        .text(line.item())
                        .number(line.quantity(), 4)
                        .text(line.unit())
                        .number(line.presentCostPerUnit(), 6)
                        .money(line.presentCost(), decimals)
                        .text(plan.currency()));
            }
        }
        return table;
    }

    /** energy.csv: energy for charging by slice of one price, on one day of each kind. */
    public static CsvTable energy(Plan plan) {
        CsvTable table = new CsvTable(
                "energy.csv",
                "depot",
                "kind_of_day",
                "season_days",
                "days_per_year",
                "from_time",
                "to_time",
                "energy_kwh_per_day",
                "price_per_kwh",
                "cost_per_day",
                "currency");
        for (DepotPlan depot : plan.depots()) {
            for (int kind = 1; kind <= depot.days().size(); kind++) {
                for (EnergyUse use : depot.days().get(kind - 1).energy()) {
                    energy(table, plan, depot, kind, use);
                }
            }
        }
        return table;
    }

    /** cost_check.csv: the cost of each category as planned and as the replay worked it out again. */
    public static CsvTable check(ReplayReport report, String currency) {
        CsvTable table = new CsvTable(
                "cost_check.csv",
                "depot",
                "category",
                "planned_present_cost",
                "recomputed_present_cost",
                "difference",
                "currency");
        for (DepotReplay depot : report.depots()) {
            for (CostCheck.CategoryCost cost : depot.costs().lines()) {
                table.row(row -> row.text(depot.depot())
                        .text(Words.of(cost.category()))
                        .text(Figures.plain(cost.planned(), 4))
                        .text(Figures.plain(cost.expected(), 4))
                        .text(Figures.plain(cost.planned().subtract(cost.expected()), 4))
                        .text(currency));
            }
        }
        return table;
    }

    private static void energy(CsvTable table, Plan plan, DepotPlan depot, int kind, EnergyUse use) {
        DayPlan day = depot.days().get(kind - 1);
        BigDecimal cost = use.pricePerKwh().multiply(BigDecimal.valueOf(use.kwh()));
        table.row(row -> row.text(depot.depot())
                .count(kind)
                .text(DayNames.of(day.occurrences()))
                .number(day.daysPerYear(), 3)
                .time(use.fromMinute())
                .time(use.toMinute())
                .number(use.kwh(), 4)
                .exact(use.pricePerKwh())
                .text(Figures.plain(cost, 4))
                .text(plan.currency()));
    }
}
