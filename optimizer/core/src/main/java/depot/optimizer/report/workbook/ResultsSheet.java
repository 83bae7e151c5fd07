package depot.optimizer.report.workbook;

import depot.optimizer.finance.FlowKind;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.SheetPen.Look;
import depot.optimizer.report.workbook.YearCells.Row;
import org.dhatim.fastexcel.Workbook;

/** What the plan comes to: by itself, against staying on petrol, by kind of flow. */
final class ResultsSheet {

    private static final String NAME = "Results";

    private final SheetPen pen;
    private int row = 3;

    /**
     * @param plannedCost present cost in plan.json
     */
    ResultsSheet(Workbook workbook, YearCells cells, double plannedCost, String currency) {
        pen = new SheetPen(workbook, NAME);
        pen.title("Results");
        pen.text(1, 0, "Amounts in " + currency + ", over the horizon of the inputs.");
        pen.width(0, 44);
        pen.width(1, 22);
        pen.width(2, 60);
        String annuity = "SUM(" + cells.years(Row.FACTOR, 1, YearCells.LAST_YEAR) + ")";
        String cost = line("Present cost of the plan", Look.MONEY, "-" + cells.presentValue(Row.PLAN), "");
        String planned = pen.fixed(row, 1, plannedCost, Look.MONEY);
        pen.text(row, 0, "Present cost in plan.json");
        pen.text(row++, 2, "as planned, before anything here was changed");
        line("Difference", Look.MONEY, "ROUND(%s-%s,2)".formatted(cost, planned), "0 until an input is changed");
        line("The same every year", Look.MONEY, cost + "/" + annuity, "present cost times A/P");
        row++;
        String petrol = "(%s+%s)"
                .formatted(cells.presentValue(FlowKind.PETROL_SAVED), cells.presentValue(FlowKind.PETROL_EITHER_WAY));
        line("Present cost of staying on petrol", Look.MONEY, petrol, "fuel and upkeep");
        line("The same every year", Look.MONEY, petrol + "/" + annuity, "");
        line(
                "Present value of the plan against petrol",
                Look.MONEY,
                against(petrol, cells.presentValue(Row.NET)),
                "carbon and taxes included");
        String payback = payback(cells.all(Row.PAYBACK));
        line("Payback (years)", Look.FACTOR, against(petrol, payback), "");
        String withInterest = payback(cells.all(Row.PRESENT_PAYBACK));
        line("Payback with interest (years)", Look.FACTOR, against(petrol, withInterest), "");
        line(
                "Internal rate of return against petrol",
                Look.PERCENT,
                against(petrol, rate(cells.all(Row.NET))),
                "only where the yearly flows change their sign once");
        byKind(cells);
    }

    private String line(String label, Look look, String formula, String remark) {
        pen.text(row, 0, label);
        pen.text(row, 2, remark);
        return pen.formula(row++, 1, look, formula);
    }

    private static String against(String petrol, String formula) {
        return "IF(%s=0,\"%s\",%s)".formatted(petrol, Words.NO_PETROL, formula);
    }

    private static String payback(String years) {
        return "IF(COUNT(%s)=0,\"%s\",MIN(%s))".formatted(years, Words.NEVER, years);
    }

    private static String rate(String flows) {
        return "IF(AND(MIN(%s)<0,MAX(%s)>0),IFERROR(IRR(%s),\"none found\"),\"none: no change of sign\")"
                .formatted(flows, flows, flows);
    }

    private void byKind(YearCells cells) {
        row++;
        pen.headings(row++, "Kind", "Present value");
        for (FlowKind kind : FlowKind.values()) {
            line(Words.of(kind), Look.MONEY, cells.presentValue(kind), "");
        }
        line("All together", Look.MONEY, cells.presentValue(Row.NET), "");
    }
}
