package depot.optimizer.report.workbook;

import depot.optimizer.report.workbook.InputsSheet.OrderCells;
import depot.optimizer.report.workbook.InputsSheet.PhaseCells;
import depot.optimizer.report.workbook.PlanLines.FleetOrder;
import depot.optimizer.report.workbook.SheetPen.Look;
import java.util.Optional;
import org.dhatim.fastexcel.Workbook;

/**
 * What quantity prices take off and what spare pieces cost. What a piece costs less at its purchase it is worth less at the end, as long as no other has
 * followed it by then: those that follow cost their own price. There is no such sheet where the fleet orders nothing.
 */
final class OrdersSheet {

    private static final String NAME = "Orders";
    private static final int HEAD = 2;
    private static final int PAID = 5;
    private static final int VALUE = 7;
    private static final int BEGINS = 8;

    /** Rounding of times, in years, as in the cash flow. */
    private static final String ROUNDING = "0.000000001";

    private final Optional<SheetPen> pen;
    private final PlanLines lines;
    private final int first = HEAD + 1;
    private final int last;

    OrdersSheet(Workbook workbook, InputsSheet inputs, PlanLines lines) {
        this.lines = lines;
        last = first + lines.orders().size() - 1;
        pen = lines.orders().isEmpty() ? Optional.empty() : Optional.of(new SheetPen(workbook, NAME));
        pen.ifPresent(sheet -> fill(sheet, inputs));
    }

    private void fill(SheetPen sheet, InputsSheet inputs) {
        sheet.title("Quantity prices and spare pieces");
        sheet.width(1, 18);
        sheet.width(2, 22);
        for (int column = 3; column <= BEGINS; column++) {
            sheet.width(column, 16);
        }
        sheet.headings(
                HEAD,
                "Phase",
                "Kind",
                "Item",
                "Pieces",
                "Each more than its own price",
                "Paid at the purchase",
                "Left at the end, of one paid",
                "Worth at the end",
                "Paid in year");
        for (int i = 0; i < lines.orders().size(); i++) {
            line(sheet, first + i, lines.orders().get(i), inputs.order(i), inputs);
        }
    }

    private void line(SheetPen sheet, int row, FleetOrder order, OrderCells cells, InputsSheet inputs) {
        PhaseCells phase = inputs.phase(order.phase());
        sheet.fixed(row, 0, order.phase(), Look.PLAIN);
        sheet.text(row, 1, order.spare() ? "Spare pieces" : "Quantity price");
        sheet.text(row, 2, order.name());
        String pieces = sheet.formula(row, 3, Look.PLAIN, cells.pieces());
        String more =
                sheet.formula(row, 4, Look.MONEY, order.spare() ? cells.paid() : cells.paid() + "-" + cells.ownPrice());
        String paid = sheet.formula(row, PAID, Look.MONEY, pieces + "*" + more);
        String years = "(%s-%s)".formatted(inputs.settings().horizon(), phase.begins());
        String followed = "%s<%s-%s".formatted(cells.lifeYears(), years, ROUNDING);
        String share = "(%s-%s)/%s".formatted(cells.lifeYears(), years, cells.lifeYears());
        String ofLife = "IF(ISNUMBER(%s),IF(%s,0,%s),1)".formatted(cells.lifeYears(), followed, share);
        String left = sheet.formula(row, 6, Look.FACTOR, "IF(%s>0,%s,0)".formatted(years, ofLife));
        sheet.formula(row, VALUE, Look.MONEY, paid + "*" + left);
        sheet.formula(row, BEGINS, Look.PLAIN, phase.begins());
    }

    /** What is paid on top when a phase begins, below 0 where it is less; 0 without a sheet. */
    String paidIn(int phase) {
        return pen.map(sheet -> "SUMIF(%s,%d,%s)".formatted(column(sheet, 0), phase, column(sheet, PAID)))
                .orElse("0");
    }

    /** The same in a year. */
    String purchases(String year) {
        return pen.map(sheet -> "SUMIF(%s,%s,%s)".formatted(column(sheet, BEGINS), year, column(sheet, PAID)))
                .orElse("0");
    }

    /** What is worth more at the end of the horizon for having been paid on top, below 0 where less was paid; empty without a sheet. */
    Optional<String> valueAtEnd() {
        return pen.map(sheet -> "SUM(%s)".formatted(column(sheet, VALUE)));
    }

    private String column(SheetPen sheet, int column) {
        return sheet.range(first, column, last, column);
    }
}
