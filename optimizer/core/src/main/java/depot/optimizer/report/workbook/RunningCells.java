package depot.optimizer.report.workbook;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.InputsSheet.ItemCells;
import depot.optimizer.report.workbook.PlanLines.Item;
import depot.optimizer.report.workbook.PlanLines.Running;
import depot.optimizer.report.workbook.SheetPen.Look;
import java.util.List;
import java.util.Optional;

/** Cells of what comes every year: quantities, and the price of one in the first year. */
final class RunningCells {

    private static final int QUANTITY = 2;
    private static final int YEARLY_PRICE = 4;
    private static final int PHASE = 5;

    private final SheetPen pen;
    private final PlanLines lines;
    private final List<ItemCells> items;
    private final int firstRunning;
    private int row;

    /** Writes them from a row on, with prices of packs from the cells of the items. */
    RunningCells(SheetPen pen, int firstRow, PlanLines lines, List<ItemCells> items) {
        this.pen = pen;
        this.lines = lines;
        this.items = items;
        row = pen.section(
                firstRow,
                "Every year",
                "Kind",
                "Item",
                "Quantity",
                "Unit",
                "Price of one in the first year",
                "Number of the phase");
        firstRunning = row;
        write();
    }

    /** The row below them. */
    int nextRow() {
        return row;
    }

    private void write() {
        for (Running line : lines.running()) {
            pen.text(row, 0, Words.of(line.category()));
            pen.text(row, 1, line.item());
            pen.input(row, QUANTITY, line.quantity(), Look.PLAIN);
            pen.text(row, 3, line.unit());
            Optional<String> pack = packPrice(line);
            if (pack.isPresent()) {
                pen.formula(row, YEARLY_PRICE, Look.PLAIN, pack.get());
            } else {
                pen.input(row, YEARLY_PRICE, line.pricePerUnit(), Look.PLAIN);
            }
            pen.fixed(row, PHASE, line.phase(), Look.PLAIN);
            row++;
        }
    }

    /** Worn packs cost what packs cost. */
    private Optional<String> packPrice(Running line) {
        for (int i = 0; i < items.size(); i++) {
            Item item = lines.items().get(i);
            if (line.category() == Category.PACK_WEAR
                    && item.kept()
                    && item.name().equals(line.item())) {
                return Optional.of(items.get(i).price());
            }
        }
        return Optional.empty();
    }

    /** What a kind of cost comes to in a year of a phase, at the prices of the first year; empty: there is none. */
    Optional<String> yearlyCost(Category category, int phase) {
        return block(category, phase, QUANTITY).map(quantities -> "SUMPRODUCT(%s,%s)"
                .formatted(quantities, block(category, phase, YEARLY_PRICE).orElseThrow()));
    }

    /** How much of something comes in a year of a phase; empty: nothing. */
    Optional<String> yearlyQuantity(Category category, int phase) {
        return block(category, phase, QUANTITY).map("SUM(%s)"::formatted);
    }

    /** Rows of one kind and phase stand together; empty: there are none. */
    private Optional<String> block(Category category, int phase, int column) {
        List<Boolean> those = lines.running().stream()
                .map(line -> line.category() == category && line.phase() == phase)
                .toList();
        int first = those.indexOf(true);
        return first < 0
                ? Optional.empty()
                : Optional.of(pen.range(firstRunning + first, column, firstRunning + those.lastIndexOf(true), column));
    }
}
