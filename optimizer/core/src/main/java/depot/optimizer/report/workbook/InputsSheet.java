package depot.optimizer.report.workbook;

import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.PlanLines.Count;
import depot.optimizer.report.workbook.PlanLines.FleetOrder;
import depot.optimizer.report.workbook.PlanLines.Item;
import depot.optimizer.report.workbook.SheetPen.Look;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.dhatim.fastexcel.Workbook;

/** Everything that a reader may change: horizon, rates, prices, counts, yearly quantities, depreciation. Other sheets point here. */
final class InputsSheet {

    private static final String NAME = "Inputs";
    private static final int ITEM_NUMBER = 5;
    private static final int PHASE_NUMBER = 6;

    private final SheetPen pen;
    private final PlanLines lines;
    private final SettingCells settings;
    private final List<ItemCells> items = new ArrayList<>();
    private final List<CountCells> counts = new ArrayList<>();
    private final List<String> writeOffs = new ArrayList<>();
    private final List<PhaseCells> phases = new ArrayList<>();
    private final List<OrderCells> orders = new ArrayList<>();
    private int row;
    private int firstCount;
    private final RunningCells running;

    /** Cells of an item. */
    record ItemCells(String number, String price, String installCost, String lifeYears) {}

    /** Cells of a count. */
    record CountCells(String bought, String owned) {}

    /** Cells of a phase: its number, the year at whose end it begins, the last year that belongs to it, and its budget. */
    record PhaseCells(String number, String begins, String ends, String budget) {}

    /** Cells of an order of the fleet. */
    record OrderCells(String pieces, String ownPrice, String paid, String lifeYears) {}

    InputsSheet(Workbook workbook, Scenario scenario, PlanLines lines) {
        this.lines = lines;
        pen = new SheetPen(workbook, NAME);
        pen.width(0, 32);
        pen.width(1, 26);
        for (int column = 2; column <= PHASE_NUMBER; column++) {
            pen.width(column, 18);
        }
        pen.title(scenario.name() + ": inputs");
        pen.text(
                1,
                0,
                "Coloured cells may be changed; everything else in this workbook follows from them. Amounts in "
                        + scenario.currency().getCurrencyCode() + ".");
        settings = new SettingCells(pen, 3, scenario);
        row = settings.nextRow();
        phases();
        prices();
        counts();
        running = new RunningCells(pen, row, lines, items);
        row = running.nextRow();
        orders(scenario);
        depreciation(scenario.finance().writeOffs());
    }

    /** A phase lasts until the next one begins. */
    private void phases() {
        row = pen.section(
                row, "Phases", "Phase", "Begins after (years)", "Lasts until (years)", "Budget", "Number of the phase");
        for (int f = 0; f < lines.phases().size(); f++) {
            Phase phase = lines.phases().get(f);
            boolean last = f == lines.phases().size() - 1;
            pen.text(row, 0, phase.id());
            phases.add(new PhaseCells(
                    pen.fixed(row, 4, f + 1, Look.PLAIN),
                    pen.input(row, 1, phase.year(), Look.PLAIN),
                    pen.formula(row, 2, Look.PLAIN, last ? settings.horizon() : pen.ref(row + 1, 1)),
                    pen.inputOrBlank(row, 3, phase.budget().orElse(null), Look.MONEY)));
            row++;
        }
    }

    private void prices() {
        row = pen.section(
                row, "Prices", "Kind", "Item", "Price of one", "Installing one", "Life (years)", "Number of the item");
        for (Item item : lines.items()) {
            pen.text(row, 0, Words.of(item.category()));
            pen.text(row, 1, item.name());
            items.add(new ItemCells(
                    pen.fixed(row, ITEM_NUMBER, items.size() + 1, Look.PLAIN),
                    pen.input(row, 2, item.price(), Look.MONEY),
                    pen.input(row, 3, item.installCost(), Look.MONEY),
                    pen.inputOrBlank(row, 4, SheetPen.boxed(item.lifeYears()), Look.PLAIN)));
            row++;
        }
    }

    private void counts() {
        row = pen.section(
                row,
                "Pieces",
                "Depot",
                "Item",
                "Kind",
                "To buy",
                "Owned already",
                "Number of the item",
                "Number of the phase");
        firstCount = row;
        for (Count count : lines.counts()) {
            Item item = lines.items().get(count.item());
            pen.text(row, 0, count.depot());
            pen.text(row, 1, item.name());
            pen.text(row, 2, Words.of(item.category()));
            counts.add(new CountCells(
                    pen.input(row, 3, count.bought(), Look.PLAIN), pen.input(row, 4, count.owned(), Look.PLAIN)));
            pen.fixed(row, ITEM_NUMBER, count.item() + 1, Look.PLAIN);
            pen.fixed(row, PHASE_NUMBER, count.phase(), Look.PLAIN);
            row++;
        }
    }

    /** Left out where the fleet as a whole orders nothing. */
    private void orders(Scenario scenario) {
        if (lines.orders().isEmpty()) {
            return;
        }
        row = pen.section(
                row,
                "Quantity prices and spare pieces",
                "Kind",
                "Item",
                "Pieces",
                "Price by itself",
                "Price paid",
                "Life (years)",
                "Number of the phase");
        for (FleetOrder order : lines.orders()) {
            pen.text(row, 0, order.spare() ? "Spare pieces" : "Quantity price");
            pen.text(row, 1, order.name());
            Optional<ItemCells> item = order.item() < 0 ? Optional.empty() : Optional.of(items.get(order.item()));
            String own = item.map(cells -> pen.formula(row, 3, Look.MONEY, cells.price()))
                    .orElseGet(() -> pen.input(row, 3, order.ownPrice(), Look.MONEY));
            orders.add(new OrderCells(
                    pen.input(row, 2, order.pieces(), Look.PLAIN),
                    own,
                    order.spare() ? pen.formula(row, 4, Look.MONEY, own) : pen.input(row, 4, order.paid(), Look.MONEY),
                    item.map(cells -> pen.formula(
                                    row,
                                    5,
                                    Look.PLAIN,
                                    "IF(ISNUMBER(%s),%s,\"\")".formatted(cells.lifeYears(), cells.lifeYears())))
                            .orElseGet(() -> pen.inputOrBlank(
                                    row,
                                    5,
                                    SheetPen.boxed(new Catalog(scenario).lifeYears(order.name())),
                                    Look.PLAIN))));
            pen.fixed(row, PHASE_NUMBER, order.phase(), Look.PLAIN);
            row++;
        }
    }

    private void depreciation(List<Double> shares) {
        row = pen.section(row, "Depreciation", "Year after the payment", "Share written off");
        for (int year = 1; year <= YearCells.LAST_YEAR; year++) {
            pen.fixed(row, 0, year, Look.PLAIN);
            writeOffs.add(pen.inputOrBlank(row, 1, year <= shares.size() ? shares.get(year - 1) : null, Look.PERCENT));
            row++;
        }
    }

    /** Cells that hold for the whole plan. */
    SettingCells settings() {
        return settings;
    }

    /** Cells of what comes every year. */
    RunningCells running() {
        return running;
    }

    /** Cells of an item, by its index. */
    ItemCells item(int index) {
        return items.get(index);
    }

    /** Cells of a count, by its index. */
    CountCells count(int index) {
        return counts.get(index);
    }

    /** Share written off in a year after the payment, from 1. */
    String writeOff(int year) {
        return writeOffs.get(year - 1);
    }

    /** Cells of a phase, by its number from 1. */
    PhaseCells phase(int number) {
        return phases.get(number - 1);
    }

    /** Cells of an order of the fleet, by its index. */
    OrderCells order(int index) {
        return orders.get(index);
    }

    /** Pieces of an item to buy in a phase, over all depots. */
    String bought(ItemCells item, PhaseCells phase) {
        return pieces(item, phase, 3);
    }

    /** Pieces of an item that are owned already and first used in a phase, over all depots. */
    String owned(ItemCells item, PhaseCells phase) {
        return pieces(item, phase, 4);
    }

    private String pieces(ItemCells item, PhaseCells phase, int column) {
        return "SUMIFS(%s,%s,%s,%s,%s)"
                .formatted(
                        countRange(column),
                        countRange(ITEM_NUMBER),
                        item.number(),
                        countRange(PHASE_NUMBER),
                        phase.number());
    }

    private String countRange(int column) {
        return pen.range(firstCount, column, firstCount + counts.size() - 1, column);
    }
}
