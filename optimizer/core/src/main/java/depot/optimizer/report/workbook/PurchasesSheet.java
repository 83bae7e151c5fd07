package depot.optimizer.report.workbook;

import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.InputsSheet.CountCells;
import depot.optimizer.report.workbook.InputsSheet.ItemCells;
import depot.optimizer.report.workbook.InputsSheet.PhaseCells;
import depot.optimizer.report.workbook.PlanLines.Count;
import depot.optimizer.report.workbook.PlanLines.Item;
import depot.optimizer.report.workbook.SheetPen.Look;
import org.dhatim.fastexcel.Workbook;

/** What is bought in which phase, depot by depot, and what each phase spends. Phase 1 is now. */
final class PurchasesSheet {

    private static final String NAME = "Purchases";
    private static final int HEAD = 2;
    private static final int PRICE = 7;
    private static final int INSTALL = 8;
    private static final int TOTAL = 9;
    private static final int BEGINS = 10;

    private final SheetPen pen;
    private final int first = HEAD + 1;
    private final int last;

    PurchasesSheet(Workbook workbook, InputsSheet inputs, PlanLines lines, OrdersSheet orders) {
        pen = new SheetPen(workbook, NAME);
        pen.title("Purchases by phase");
        pen.width(1, 16);
        pen.width(2, 22);
        pen.width(3, 22);
        for (int column = 4; column <= BEGINS; column++) {
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
                "Together",
                "Paid in year");
        int row = first;
        for (int i = 0; i < lines.counts().size(); i++) {
            line(row++, lines.counts().get(i), inputs.count(i), lines, inputs);
        }
        // Without purchases the range is one blank row, so that no sum takes in itself.
        last = Math.max(first, row - 1);
        total(last + 1, "All");
        phases(last + 3, inputs, lines, orders);
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
        pen.formula(row, BEGINS, Look.PLAIN, inputs.phase(count.phase()).begins());
    }

    private void total(int row, String label) {
        pen.bold(row, 0, label);
        for (int column = PRICE; column <= TOTAL; column++) {
            pen.boldFormula(row, column, Look.MONEY, "SUM(" + column(column) + ")");
        }
    }

    private void phases(int row, InputsSheet inputs, PlanLines lines, OrdersSheet orders) {
        pen.bold(row, 0, "By phase");
        pen.headings(
                row + 1,
                "Phase",
                "Name",
                "Begins in year",
                "Purchase",
                "Installation",
                "Quantity prices and spare pieces",
                "Together",
                "Budget",
                "Left of the budget");
        int at = row + 2;
        for (int phase = 1; phase <= lines.phases().size(); phase++) {
            PhaseCells cells = inputs.phase(phase);
            String number = pen.formula(at, 0, Look.PLAIN, cells.number());
            pen.text(at, 1, lines.phases().get(phase - 1).id());
            pen.formula(at, 2, Look.PLAIN, cells.begins());
            String purchase = pen.formula(at, 3, Look.MONEY, ofPhase(number, PRICE));
            String installation = pen.formula(at, 4, Look.MONEY, ofPhase(number, INSTALL));
            String fleet = pen.formula(at, 5, Look.MONEY, orders.paidIn(phase));
            String all = pen.formula(at, 6, Look.MONEY, purchase + "+" + installation + "+" + fleet);
            pen.formula(at, 7, Look.MONEY, ifBudget(cells.budget(), cells.budget()));
            pen.formula(at, 8, Look.MONEY, ifBudget(cells.budget(), cells.budget() + "-" + all));
            at++;
        }
    }

    private String ofPhase(String number, int column) {
        return "SUMIF(%s,%s,%s)".formatted(column(0), number, column(column));
    }

    private static String ifBudget(String budget, String formula) {
        return "IF(ISNUMBER(%s),%s,\"none\")".formatted(budget, formula);
    }

    /** Prices of all pieces bought in a year. */
    String purchases(String year) {
        return inYear(year, PRICE);
    }

    /** Installation of all pieces bought in a year. */
    String installation(String year) {
        return inYear(year, INSTALL);
    }

    private String inYear(String year, int column) {
        return "SUMIF(%s,%s,%s)".formatted(column(BEGINS), year, column(column));
    }

    private String column(int column) {
        return pen.range(first, column, last, column);
    }
}
