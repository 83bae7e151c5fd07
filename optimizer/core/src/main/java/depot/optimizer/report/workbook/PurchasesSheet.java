package depot.optimizer.report.workbook;

import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.InputsSheet.CountCells;
import depot.optimizer.report.workbook.InputsSheet.ItemCells;
import depot.optimizer.report.workbook.PlanLines.Count;
import depot.optimizer.report.workbook.PlanLines.Item;
import depot.optimizer.report.workbook.SheetPen.Look;
import org.dhatim.fastexcel.Workbook;

/** What is bought in which phase, depot by depot. Phase 1 is now. */
final class PurchasesSheet {

    private static final String NAME = "Purchases";
    private static final int HEAD = 2;
    private static final int PRICE = 7;
    private static final int INSTALL = 8;
    private static final int TOTAL = 9;

    private final SheetPen pen;
    private final int first = HEAD + 1;
    private final int last;

    PurchasesSheet(Workbook workbook, InputsSheet inputs, PlanLines lines) {
        pen = new SheetPen(workbook, NAME);
        pen.title("Purchases by phase");
        pen.width(1, 16);
        pen.width(2, 22);
        pen.width(3, 22);
        for (int column = 4; column <= TOTAL; column++) {
            pen.width(column, 14);
        }
        pen.headings(
                HEAD,
                "Phase",
                "Depot",
                "Kind",
                "Item",
                "To buy",
                "Price of one",
                "Installing one",
                "Purchase",
                "Installation",
                "Together");
        int row = first;
        for (int i = 0; i < lines.counts().size(); i++) {
            line(row++, lines.counts().get(i), inputs.count(i), lines, inputs);
        }
        // Without purchases the range is one blank row, so that no sum takes in itself.
        last = Math.max(first, row - 1);
        total(last + 1, "All");
        phases(last + 3, lines);
    }

    private void line(int row, Count count, CountCells cells, PlanLines lines, InputsSheet inputs) {
        Item item = lines.items().get(count.item());
        ItemCells prices = inputs.item(count.item());
        pen.fixed(row, 0, count.phase(), Look.PLAIN);
        pen.text(row, 1, count.depot());
        pen.text(row, 2, Words.of(item.category()));
        pen.text(row, 3, item.name());
        String bought = pen.formula(row, 4, Look.PLAIN, cells.bought());
        String price = pen.formula(row, 5, Look.MONEY, prices.price());
        String install = pen.formula(row, 6, Look.MONEY, prices.installCost());
        String purchase = pen.formula(row, PRICE, Look.MONEY, bought + "*" + price);
        String installation = pen.formula(row, INSTALL, Look.MONEY, bought + "*" + install);
        pen.formula(row, TOTAL, Look.MONEY, purchase + "+" + installation);
    }

    private void total(int row, String label) {
        pen.bold(row, 0, label);
        for (int column = PRICE; column <= TOTAL; column++) {
            pen.boldFormula(row, column, Look.MONEY, "SUM(" + column(column) + ")");
        }
    }

    private void phases(int row, PlanLines lines) {
        pen.bold(row, 0, "By phase");
        pen.headings(row + 1, "Phase", "Starts in year", "Purchase", "Installation", "Together");
        int at = row + 2;
        for (int phase : lines.counts().stream()
                .mapToInt(Count::phase)
                .distinct()
                .sorted()
                .toArray()) {
            String number = pen.fixed(at, 0, phase, Look.PLAIN);
            pen.fixed(at, 1, 0, Look.PLAIN);
            for (int part = 0; part <= TOTAL - PRICE; part++) {
                pen.formula(
                        at, 2 + part, Look.MONEY, "SUMIF(%s,%s,%s)".formatted(column(0), number, column(PRICE + part)));
            }
            at++;
        }
    }

    /** Prices of all pieces bought. */
    String purchases() {
        return column(PRICE);
    }

    /** Installation of all pieces bought. */
    String installation() {
        return column(INSTALL);
    }

    private String column(int column) {
        return pen.range(first, column, last, column);
    }
}
