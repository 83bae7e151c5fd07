package depot.optimizer.report.page;

import depot.optimizer.finance.Appraisal;
import depot.optimizer.finance.CashFlow;
import depot.optimizer.finance.FlowKind;
import depot.optimizer.report.page.StepLine.Style;
import depot.optimizer.report.page.YearChart.YearLine;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.text.Amounts;
import depot.optimizer.report.text.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the plan pays and saves, year by year, and what that comes to. */
final class CashFlowViews {

    private CashFlowViews() {}

    static CashFlowView of(PageMaker maker) {
        CashFlow flow = CashFlow.of(maker.catalog().scenario(), maker.plan());
        return new CashFlowView(
                facts(maker, flow), notes(maker, flow), chart(maker, flow), yearly(maker.amounts(), flow));
    }

    private static List<Fact> facts(PageMaker maker, CashFlow flow) {
        Amounts amounts = maker.amounts();
        Appraisal appraisal = Appraisal.of(flow);
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(
                "The plan's cost, the same every year",
                amount(amounts, appraisal.yearlyCost()),
                "its present cost spread evenly over " + maker.horizon()));
        if (!flow.petrolKnown()) {
            return facts;
        }
        facts.add(new Fact(
                "Staying on petrol, the same every year",
                amount(amounts, appraisal.petrolYearlyCost()),
                "fuel and upkeep"));
        facts.add(new Fact(
                "Present value against petrol",
                amount(amounts, appraisal.netPresentValue()),
                "over " + maker.horizon() + ", carbon and taxes included"));
        facts.add(new Fact(
                "Pays back after",
                years(appraisal.paybackYears()),
                "with interest: " + years(appraisal.discountedPaybackYears())));
        OptionalDouble rate = appraisal.rate().rate();
        facts.add(new Fact(
                "Internal rate of return",
                rate.isPresent() ? Figures.percent(rate.getAsDouble()) + " a year" : "none",
                Words.of(appraisal.rate().finding())));
        return List.copyOf(facts);
    }

    private static String amount(Amounts amounts, double amount) {
        return amounts.showWithCode(amounts.rounded(amount));
    }

    private static String years(OptionalDouble years) {
        return years.isPresent() ? Figures.count(Figures.read(years.getAsDouble(), 1), "year") : Words.NEVER;
    }

    private static List<String> notes(PageMaker maker, CashFlow flow) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Year 0 is now; every other year is paid at its end. Amounts received are above 0, amounts paid below. What "
                        + "is paid within a year, such as a charger that lasts two and a half years, is carried to its end with "
                        + "interest.");
        if (!flow.petrolKnown()) {
            notes.add(
                    "Nothing is known of what staying on petrol would cost (petrol_cost_per_year in crews.csv, or litres in "
                            + "tools.csv and their price), so that there is nothing to compare the plan with.");
        }
        if (maker.catalog().scenario().finance().taxRate() > 0) {
            notes.add(
                    "Purchases, installation and replacements at the end of a life are written off, at what is paid for them, from "
                            + "the year after they are paid; all else counts in its year. A loss is set off against other "
                            + "profits.");
        }
        return List.copyOf(notes);
    }

    private static LineChart chart(PageMaker maker, CashFlow flow) {
        List<YearLine> lines = new ArrayList<>();
        lines.add(new YearLine("This plan", Style.FIRST, addedUp(flow.planCosts())));
        if (flow.petrolKnown()) {
            List<Double> petrol = flow.petrolOfAll();
            lines.add(new YearLine("Staying on petrol", Style.SECOND, addedUp(petrol)));
        }
        String description = "Costs of the plan added up from now to the end of each year"
                + (flow.petrolKnown() ? ", beside those of staying on petrol" : "")
                + "; neither carbon nor taxes. In the last year the plan gets back what its equipment is still worth.";
        return YearChart.of(
                "cash-flow-chart",
                "Costs added up over the years",
                description,
                "Costs so far",
                maker.amounts().code(),
                lines);
    }

    private static List<Double> addedUp(List<Double> yearly) {
        List<Double> sums = new ArrayList<>();
        double sum = 0;
        for (double amount : yearly) {
            sum += amount;
            sums.add(sum);
        }
        return sums;
    }

    /** One row per year, one column per kind that occurs; every cell is rounded before it is added. */
    private static TableView yearly(Amounts amounts, CashFlow flow) {
        List<FlowKind> kinds = flow.byKind().entrySet().stream()
                .filter(kind -> kind.getValue().stream().anyMatch(amount -> amount != 0))
                .map(kind -> kind.getKey())
                .toList();
        TableView.Builder table = TableView.of("cash-flow-table", "Yearly flows in " + amounts.code())
                .words("Year");
        kinds.forEach(kind -> table.numbers(Words.of(kind)));
        table.numbers("All together", "So far", "Present value");
        List<BigDecimal> totals = new ArrayList<>();
        BigDecimal soFar = BigDecimal.ZERO;
        BigDecimal present = BigDecimal.ZERO;
        for (int year = 0; year <= flow.horizonYears(); year++) {
            List<BigDecimal> cells = new ArrayList<>();
            for (FlowKind kind : kinds) {
                cells.add(amounts.rounded(flow.at(kind, year)));
            }
            BigDecimal net = cells.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            BigDecimal value =
                    amounts.rounded(flow.net().get(year) * flow.money().factor(year));
            soFar = soFar.add(net);
            present = present.add(value);
            totals = added(totals, cells);
            table.row(row(amounts, Integer.toString(year), cells, List.of(net, soFar, value))
                    .toArray(new String[0]));
        }
        return table.total(row(amounts, "All", totals, List.of(soFar, soFar, present))
                        .toArray(new String[0]))
                .build();
    }

    private static List<BigDecimal> added(List<BigDecimal> sums, List<BigDecimal> cells) {
        List<BigDecimal> added = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            added.add(sums.isEmpty() ? cells.get(i) : sums.get(i).add(cells.get(i)));
        }
        return added;
    }

    private static List<String> row(Amounts amounts, String year, List<BigDecimal> cells, List<BigDecimal> sums) {
        List<String> row = new ArrayList<>(List.of(year));
        cells.forEach(cell -> row.add(amounts.show(cell)));
        sums.forEach(sum -> row.add(amounts.show(sum)));
        return row;
    }
}
