package depot.optimizer.report.workbook;

import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.InputsSheet.ItemCells;
import depot.optimizer.report.workbook.InputsSheet.PhaseCells;
import depot.optimizer.report.workbook.PlanLines.Batch;
import depot.optimizer.report.workbook.PlanLines.Item;
import depot.optimizer.report.workbook.SheetPen.Look;
import java.util.ArrayList;
import java.util.List;
import org.dhatim.fastexcel.Workbook;

/** For each item and phase: pieces over all depots, what they are worth at the end, and what replacing them costs in each year. */
final class ItemsSheet {

    private static final String NAME = "Replacements";
    private static final int HEAD = 3;
    private static final int ITEM = 1;
    private static final int BOUGHT = 2;
    private static final int OWNED = 3;
    private static final int VALUE = 4;
    private static final int BEGINS = 5;
    private static final int FIRST_YEAR = 6;

    /** Rounding of times, in years, as in the cash flow. */
    private static final String ROUNDING = "0.000000001";

    private final SheetPen pen;
    private final InputsSheet inputs;
    private final int first = HEAD + 1;
    private final int last;

    ItemsSheet(Workbook workbook, InputsSheet inputs, PlanLines lines) {
        this.inputs = inputs;
        pen = new SheetPen(workbook, NAME);
        pen.title("Pieces replaced at the end of their lives");
        pen.text(1, 0, "What is paid within a year is carried to its end with interest.");
        pen.width(0, 22);
        pen.width(ITEM, 22);
        pen.width(VALUE, 16);
        pen.headings(HEAD, "Kind", "Item", "To buy", "Owned", "Worth at the end", "From year");
        List<String> years = new ArrayList<>();
        for (int year = 1; year <= YearCells.LAST_YEAR; year++) {
            years.add(pen.fixed(HEAD, FIRST_YEAR + year - 1, year, Look.PLAIN));
        }
        pen.freeze(2, HEAD + 1);
        List<Batch> batches = lines.batches();
        for (int i = 0; i < batches.size(); i++) {
            batch(first + i, batches.get(i), lines, years);
        }
        last = Math.max(first, first + batches.size() - 1);
    }

    private void batch(int row, Batch batch, PlanLines lines, List<String> years) {
        Item item = lines.items().get(batch.item());
        ItemCells cells = inputs.item(batch.item());
        PhaseCells phase = inputs.phase(batch.phase());
        pen.text(row, 0, Words.of(item.category()));
        pen.text(row, ITEM, item.name());
        String boughtCell = pen.formula(row, BOUGHT, Look.PLAIN, inputs.bought(cells, phase));
        String ownedCell = pen.formula(row, OWNED, Look.PLAIN, inputs.owned(cells, phase));
        String begins = pen.formula(row, BEGINS, Look.PLAIN, phase.begins());
        String left = "(%s-%s)".formatted(inputs.settings().horizon(), begins);
        String value = item.kept() ? cells.price() + "*" + boughtCell : value(cells, boughtCell, ownedCell, left);
        pen.formula(row, VALUE, Look.MONEY, "IF(%s>0,%s,0)".formatted(left, value));
        for (int year = 1; year <= YearCells.LAST_YEAR; year++) {
            String after = "(%s-%s)".formatted(years.get(year - 1), begins);
            String pieces = replaced(cells.lifeYears(), after, left);
            String paid = "IF(ISNUMBER(%s),(%s+%s)*%s*%s,0)"
                    .formatted(cells.lifeYears(), boughtCell, ownedCell, cells.price(), pieces);
            pen.formula(row, FIRST_YEAR + year - 1, Look.MONEY, item.kept() ? "0" : paid);
        }
    }

    /**
     * Price x remaining share of the last life; owned pieces only once one of them was replaced.
     *
     * @param years from the beginning of the phase to the horizon
     */
    private static String value(ItemCells cells, String bought, String owned, String years) {
        String life = cells.lifeYears();
        String lives = "-INT(-(%s/%s-%s))".formatted(years, life, ROUNDING);
        String share = "(%s*%s-%s)/%s".formatted(lives, life, years, life);
        String counted = "(%s+IF(%s<%s-%s,%s,0))".formatted(bought, life, years, ROUNDING, owned);
        return "IF(ISNUMBER(%s),%s*%s*%s,0)".formatted(life, cells.price(), counted, share);
    }

    /**
     * Pieces bought within a year to follow one piece, each with interest to the year's end: the lives that end from j1
     * to j2 lie within the year and end before the horizon, which makes a geometric series.
     *
     * @param year counted from the beginning of the phase, 0 or less: before it
     * @param years from the beginning of the phase to the horizon
     */
    private String replaced(String life, String year, String years) {
        String rate = inputs.settings().rate();
        String from = "MAX(1,INT((%s-1+%s)/%s)+1)".formatted(year, ROUNDING, life);
        String before = "(-INT(-(%s-%s)/%s)-1)".formatted(years, ROUNDING, life);
        String to = "MIN(INT((%s+%s)/%s),%s)".formatted(year, ROUNDING, life, before);
        String pieces = "MAX(0,%s-%s+1)".formatted(to, from);
        String series = "(1+%s)^(%s-%s*%s)*(1-(1+%s)^(-%s*%s))/(1-(1+%s)^(-%s))"
                .formatted(rate, year, from, life, rate, life, pieces, rate, life);
        return "IF(%s=0,%s,%s)".formatted(rate, pieces, series);
    }

    /** What replacing costs in a year from 1. */
    String replacements(int year) {
        int column = FIRST_YEAR + year - 1;
        return "SUM(" + pen.range(first, column, last, column) + ")";
    }

    /** What everything is worth at the end of the horizon. */
    String valueAtEnd() {
        return "SUM(" + pen.range(first, VALUE, last, VALUE) + ")";
    }
}
