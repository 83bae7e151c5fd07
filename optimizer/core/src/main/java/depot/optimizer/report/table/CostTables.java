package depot.optimizer.report.table;

import static depot.optimizer.report.table.CommonColumns.CURRENCY;
import static depot.optimizer.report.table.CommonColumns.DAYS_PER_YEAR;
import static depot.optimizer.report.table.CommonColumns.DEPOT;
import static depot.optimizer.report.table.CommonColumns.KIND_OF_DAY;
import static depot.optimizer.report.table.CommonColumns.PHASE;
import static depot.optimizer.report.table.CommonColumns.SEASON_DAYS;
import static depot.optimizer.report.table.OutputColumn.amount;
import static depot.optimizer.report.table.OutputColumn.number;
import static depot.optimizer.report.table.OutputColumn.oneOf;
import static depot.optimizer.report.table.OutputColumn.time;
import static depot.optimizer.report.table.OutputColumn.words;

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

    private static final TableLayout COSTS = TableLayout.of(
            "costs.csv",
            "line of the cost; the lines add up to the plan's cost",
            PHASE,
            DEPOT,
            oneOf("category", Words.categories(), "kind of cost"),
            words("item", "what it is paid for"),
            number("quantity", "as in column unit", "how much or how many of it"),
            words("unit", "unit of the quantity"),
            amount("present_cost_per_unit", "cost of one over the horizon, in today's money"),
            amount("present_cost", "cost of all of them over the horizon, in today's money"),
            CURRENCY);

    private static final TableLayout ENERGY = TableLayout.of(
            "energy.csv",
            "depot, kind of day and slice of one price",
            PHASE,
            DEPOT,
            KIND_OF_DAY,
            SEASON_DAYS,
            DAYS_PER_YEAR,
            time("from_time", "start of the slice"),
            time("to_time", "end of the slice"),
            number("energy_kwh_per_day", "kWh", "energy drawn from the mains for charging"),
            number("price_per_kwh", "currency/kWh", "price of energy in the slice"),
            amount("cost_per_day", "energy times price"),
            CURRENCY);

    private static final TableLayout CHECK = TableLayout.of(
            "cost_check.csv",
            "depot and category of cost",
            PHASE,
            DEPOT,
            oneOf("category", Words.categories(), "kind of cost"),
            amount("planned_present_cost", "as the plan has it"),
            amount("recomputed_present_cost", "as the replay worked it out again"),
            amount("difference", "planned less recomputed"),
            CURRENCY);

    private CostTables() {}

    /** costs.csv: the lines that add up to the plan's cost, as present costs over the horizon. */
    public static CsvTable costs(Plan plan) {
        int decimals = Figures.decimals(Currency.getInstance(plan.currency()));
        CsvTable table = new CsvTable(COSTS);
        for (DepotPlan depot : plan.depots()) {
            for (CostLine line : depot.costs()) {
                table.row(row -> row.text(depot.phase())
                        .text(depot.depot())
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
        CsvTable table = new CsvTable(ENERGY);
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
        CsvTable table = new CsvTable(CHECK);
        for (DepotReplay depot : report.depots()) {
            for (CostCheck.CategoryCost cost : depot.costs().lines()) {
                table.row(row -> row.text(depot.phase())
                        .text(depot.depot())
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
        table.row(row -> row.text(depot.phase())
                .text(depot.depot())
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
