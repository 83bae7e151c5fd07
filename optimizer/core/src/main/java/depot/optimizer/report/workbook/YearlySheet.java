package depot.optimizer.report.workbook;

import depot.optimizer.finance.FlowKind;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.InputsSheet.PhaseCells;
import depot.optimizer.report.workbook.SheetPen.Look;
import depot.optimizer.report.workbook.YearCells.Row;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;

/** What is paid and saved in each year, by kind, and the sums of it. */
final class YearlySheet {

    private static final String NAME = "Yearly";

    private final SheetPen pen;
    private final YearCells cells;
    private final InputsSheet inputs;
    private final PlanLines lines;
    private final FlowFormulas formulas;

    YearlySheet(Workbook workbook, InputsSheet inputs, PlanLines lines, FlowFormulas.Sheets sheets) {
        this.inputs = inputs;
        this.lines = lines;
        pen = new SheetPen(workbook, NAME);
        cells = new YearCells(pen);
        formulas = new FlowFormulas(cells, inputs, lines.phases().size(), sheets);
        labels();
        for (int year = 0; year <= YearCells.LAST_YEAR; year++) {
            frame(year);
            flows(year);
            sums(year);
            payback(year, Row.PAYBACK, Row.SO_FAR, cells.at(Row.NET, year));
            String present = "(" + cells.at(Row.NET, year) + "*" + cells.at(Row.FACTOR, year) + ")";
            payback(year, Row.PRESENT_PAYBACK, Row.PRESENT_SO_FAR, present);
        }
    }

    /** Names of the cells, for the sheets that follow. */
    YearCells cells() {
        return cells;
    }

    private void labels() {
        pen.title("Cash flow by year");
        pen.text(1, 0, "Year 0 is now, all others are paid at their end. Received is above 0, paid below 0.");
        pen.width(0, 34);
        pen.width(1, 16);
        pen.bold(Row.YEAR.number(), 0, "Year");
        pen.bold(Row.YEAR.number(), 1, "Present value");
        label(Row.WITHIN, "Within the horizon");
        label(Row.FACTOR, "Discount factor");
        for (FlowKind kind : FlowKind.values()) {
            pen.text(YearCells.row(kind), 0, Words.of(kind));
            pen.formula(YearCells.row(kind), 1, Look.MONEY, presentValue(cells.all(kind)));
        }
        label(Row.PLAN, "The plan's own costs");
        pen.formula(Row.PLAN.number(), 1, Look.MONEY, presentValue(cells.all(Row.PLAN)));
        label(Row.NET, "All together, against petrol");
        pen.formula(Row.NET.number(), 1, Look.MONEY, presentValue(cells.all(Row.NET)));
        label(Row.SO_FAR, "So far");
        label(Row.PRESENT_SO_FAR, "So far, present values");
        label(Row.PAYBACK, "Years to payback");
        label(Row.PRESENT_PAYBACK, "Years to payback with interest");
        label(Row.BOOKS, "Goes into the books");
        label(Row.BACKWARDS, "Shares written off, last year first");
        label(Row.WRITTEN_OFF, "Written off");
        for (int phase = 1; phase <= lines.phases().size(); phase++) {
            pen.text(
                    YearCells.ofPhase(phase),
                    0,
                    "In phase " + lines.phases().get(phase - 1).id());
        }
        pen.freeze(2, Row.YEAR.number() + 1);
    }

    private void label(Row row, String text) {
        pen.text(row.number(), 0, text);
    }

    private String presentValue(String years) {
        return "SUMPRODUCT(%s,%s)".formatted(cells.all(Row.FACTOR), years);
    }

    private void frame(int year) {
        int column = YearCells.column(year);
        pen.width(column, 13);
        String number = pen.fixed(Row.YEAR.number(), column, year, Look.PLAIN);
        String within = put(
                Row.WITHIN,
                year,
                Look.PLAIN,
                "IF(%s<=%s,1,0)".formatted(number, inputs.settings().horizon()));
        for (int phase = 1; phase <= lines.phases().size(); phase++) {
            PhaseCells of = inputs.phase(phase);
            pen.formula(
                    YearCells.ofPhase(phase),
                    column,
                    Look.PLAIN,
                    "%s*IF(%s>%s,IF(%s<=%s,1,0),0)".formatted(within, number, of.begins(), number, of.ends()));
        }
        put(
                Row.FACTOR,
                year,
                Look.FACTOR,
                "%s*(1+%s)^(-%s)".formatted(within, inputs.settings().rate(), number));
    }

    private void flows(int year) {
        for (FlowKind kind : FlowKind.values()) {
            pen.formula(YearCells.row(kind), YearCells.column(year), Look.MONEY, formulas.of(kind, year));
        }
        put(Row.BOOKS, year, Look.MONEY, formulas.intoBooks(year));
        put(Row.BACKWARDS, year, Look.PERCENT, formulas.shareBackwards(year));
        put(Row.WRITTEN_OFF, year, Look.MONEY, formulas.writtenOff(year));
    }

    private void sums(int year) {
        List<FlowKind> kinds = List.of(FlowKind.values());
        put(
                Row.PLAN,
                year,
                Look.MONEY,
                sum(year, kinds.stream().filter(FlowKind::ofPlan).toArray(FlowKind[]::new)));
        String net = put(Row.NET, year, Look.MONEY, sum(year, FlowKind.values()));
        String present = net + "*" + cells.at(Row.FACTOR, year);
        put(Row.SO_FAR, year, Look.MONEY, year == 0 ? net : cells.at(Row.SO_FAR, year - 1) + "+" + net);
        put(
                Row.PRESENT_SO_FAR,
                year,
                Look.MONEY,
                year == 0 ? present : cells.at(Row.PRESENT_SO_FAR, year - 1) + "+" + present);
    }

    private String sum(int year, FlowKind... kinds) {
        return Arrays.stream(kinds).map(kind -> cells.at(kind, year)).collect(Collectors.joining("+"));
    }

    /** In the year in which the sum is no longer below 0 for the first time: years until then; blank in all others. */
    private void payback(int year, Row row, Row sums, String flow) {
        if (year == 0) {
            put(row, year, Look.FACTOR, "IF(%s>=0,0,\"\")".formatted(cells.at(sums, 0)));
            return;
        }
        put(
                row,
                year,
                Look.FACTOR,
                "IF(AND(%s=1,%s>=0,MAX(%s)<0),%d-%s/%s,\"\")"
                        .formatted(
                                cells.at(Row.WITHIN, year),
                                cells.at(sums, year),
                                cells.years(sums, 0, year - 1),
                                year - 1,
                                cells.at(sums, year - 1),
                                flow));
    }

    private String put(Row row, int year, Look look, String formula) {
        return pen.formula(row.number(), YearCells.column(year), look, formula);
    }
}
