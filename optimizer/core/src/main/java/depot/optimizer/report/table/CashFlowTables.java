package depot.optimizer.report.table;

import depot.optimizer.finance.Appraisal;
import depot.optimizer.finance.CashFlow;
import depot.optimizer.finance.FlowKind;
import depot.optimizer.report.text.Figures;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What the plan pays and saves, year by year: cash_flow.csv and finance.csv. */
public final class CashFlowTables {

    /** Name of the table of yearly flows. */
    public static final String YEARLY = "cash_flow.csv";

    /** Name of the table of what they come to. */
    public static final String FIGURES = "finance.csv";

    /** So that sums of many flows still agree with the plan's cost to the smallest coin. */
    private static final int DECIMALS = 4;

    private static final TableLayout FIGURES_LAYOUT = TableLayout.of(
            FIGURES,
            "figure that sums the years up",
            OutputColumn.words("figure", "what it is"),
            OutputColumn.number("value", "", "in the unit beside it; blank: there is none, the remark says why")
                    .orBlank(),
            OutputColumn.words("unit", "of the value; blank: a share").orBlank(),
            OutputColumn.words("remark", "why there is no value").orBlank());

    private CashFlowTables() {}

    /** cash_flow.csv: one row per year, 0 being now and all others paid at their end; received is above 0. */
    public static CsvTable yearly(CashFlow flow, String currency) {
        CsvTable table = new CsvTable(yearlyLayout());
        List<Double> net = flow.net();
        double sum = 0;
        for (int year = 0; year <= flow.horizonYears(); year++) {
            int at = year;
            sum += net.get(year);
            double soFar = sum;
            table.row(row -> {
                row.count(at);
                for (FlowKind kind : FlowKind.values()) {
                    row.number(flow.at(kind, at), DECIMALS);
                }
                double factor = flow.money().factor(at);
                row.number(0 - flow.planCosts().get(at), DECIMALS)
                        .number(net.get(at), DECIMALS)
                        .number(soFar, DECIMALS)
                        .number(factor, 8)
                        .number(net.get(at) * factor, DECIMALS)
                        .text(currency);
            });
        }
        return table;
    }

    private static TableLayout yearlyLayout() {
        List<OutputColumn> columns = new ArrayList<>();
        columns.add(OutputColumn.count("year", "years", "0: now; all others are paid at their end"));
        for (FlowKind kind : FlowKind.values()) {
            columns.add(
                    OutputColumn.amount(kind.name().toLowerCase(Locale.ROOT), Words.of(kind) + "; paid is below 0"));
        }
        columns.add(OutputColumn.amount("plan_total", "what the plan pays; paid is below 0"));
        columns.add(
                OutputColumn.amount("net_against_petrol", "all flows together: the plan against staying on petrol"));
        columns.add(OutputColumn.amount("net_so_far", "the former, from year 0 on"));
        columns.add(OutputColumn.number("discount_factor", "", "what 1 at the end of the year is worth today"));
        columns.add(OutputColumn.amount("present_value_of_net", "net_against_petrol times discount_factor"));
        columns.add(CommonColumns.CURRENCY);
        return new TableLayout(YEARLY, "year", columns);
    }

    /** finance.csv: one row per figure; a figure that there is none of says why. */
    public static CsvTable figures(Scenario scenario, CashFlow flow) {
        Appraisal appraisal = Appraisal.of(flow);
        String currency = scenario.currency().getCurrencyCode();
        CsvTable table = new CsvTable(FIGURES_LAYOUT);
        figure(table, "horizon", flow.horizonYears(), "years");
        figure(table, "discount_rate", scenario.discountRate(), "per year");
        figure(table, "electricity_price_growth", scenario.electricityPriceGrowth(), "per year");
        figure(table, "petrol_price_growth", scenario.finance().petrolPriceGrowth(), "per year");
        figure(table, "tax_rate", scenario.finance().taxRate(), "");
        figure(table, "present_cost", appraisal.presentCost(), currency);
        figure(table, "yearly_cost", appraisal.yearlyCost(), currency + "/year");
        against(table, flow, appraisal, currency);
        return table;
    }

    private static void against(CsvTable table, CashFlow flow, Appraisal appraisal, String currency) {
        boolean known = flow.petrolKnown();
        figure(table, "petrol_present_cost", known(known, appraisal.petrolPresentCost()), currency, Words.NO_PETROL);
        figure(
                table,
                "petrol_yearly_cost",
                known(known, appraisal.petrolYearlyCost()),
                currency + "/year",
                Words.NO_PETROL);
        figure(
                table,
                "net_present_value_against_petrol",
                known(known, appraisal.netPresentValue()),
                currency,
                Words.NO_PETROL);
        OptionalDouble none = OptionalDouble.empty();
        String never = known ? Words.NEVER : Words.NO_PETROL;
        figure(table, "payback", known ? appraisal.paybackYears() : none, "years", never);
        figure(table, "discounted_payback", known ? appraisal.discountedPaybackYears() : none, "years", never);
        String why = known ? Words.of(appraisal.rate().finding()) : Words.NO_PETROL;
        figure(table, "internal_rate_of_return", known ? appraisal.rate().rate() : none, "per year", why);
    }

    private static OptionalDouble known(boolean known, double value) {
        return known ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static void figure(CsvTable table, String name, double value, String unit) {
        table.row(row -> row.text(name).number(value, DECIMALS + 2).text(unit).empty());
    }

    private static void figure(CsvTable table, String name, OptionalDouble value, String unit, String whyNone) {
        table.row(row -> row.text(name)
                .text(value.isPresent() ? Figures.plain(value.getAsDouble(), DECIMALS + 2) : "")
                .text(unit)
                .text(value.isPresent() ? "" : whyNone));
    }
}
