package depot.optimizer.report.workbook;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.report.table.Catalog;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.PlanLines.Count;
import depot.optimizer.report.workbook.PlanLines.FleetOrder;
import depot.optimizer.report.workbook.PlanLines.Item;
import depot.optimizer.report.workbook.PlanLines.Running;
import depot.optimizer.report.workbook.SheetPen.Look;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Phase;
import depot.optimizer.scenario.Scenario;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.dhatim.fastexcel.Workbook;

/** Everything that a reader may change: horizon, rates, prices, counts, yearly quantities, depreciation. Other sheets point here. */
final class InputsSheet {

    private static final String NAME = "Inputs";
    private static final int ITEM_NUMBER = 5;
    private static final int PHASE_NUMBER = 6;
    private static final int RUNNING_PHASE = 5;
    private static final int QUANTITY = 2;
    private static final int YEARLY_PRICE = 4;

    private final SheetPen pen;
    private final PlanLines lines;
    private final Map<Setting, String> settings = new LinkedHashMap<>();
    private final List<ItemCells> items = new ArrayList<>();
    private final List<CountCells> counts = new ArrayList<>();
    private final List<String> writeOffs = new ArrayList<>();
    private final List<PhaseCells> phases = new ArrayList<>();
    private final List<OrderCells> orders = new ArrayList<>();
    private int row = 3;
    private int firstCount;
    private int firstRunning;

    private enum Setting {
        HORIZON,
        RATE,
        ELECTRICITY_GROWTH,
        PETROL_PRICE,
        PETROL_GROWTH,
        PETROL_CARBON,
        GRID_CARBON,
        CARBON_PRICE,
        TAX_RATE
    }

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
        rates(scenario);
        petrolAndTaxes(scenario.finance());
        phases();
        prices();
        counts();
        running();
        orders(scenario);
        depreciation(scenario.finance().writeOffs());
    }

    private void rates(Scenario scenario) {
        String longest = "whole years, 1 to " + YearCells.LAST_YEAR;
        set(Setting.HORIZON, "Horizon", scenario.horizonYears(), Look.PLAIN, longest);
        set(Setting.RATE, "Discount rate", scenario.discountRate(), Look.PERCENT, "a year");
        double growth = scenario.electricityPriceGrowth();
        set(Setting.ELECTRICITY_GROWTH, "Rise of electricity prices", growth, Look.PERCENT, "a year");
    }

    private void petrolAndTaxes(FinanceTerms terms) {
        Number petrol = terms.petrolPricePerLitre().orElse(null);
        set(Setting.PETROL_PRICE, "Price of petrol", petrol, Look.MONEY, "per litre; blank: petrol cost is all fuel");
        double growth = terms.petrolPriceGrowth();
        set(Setting.PETROL_GROWTH, "Rise of the price of petrol", growth, Look.PERCENT, "a year");
        double burning = terms.petrolKgCo2PerLitre();
        set(Setting.PETROL_CARBON, "Carbon dioxide of petrol", burning, Look.FACTOR, "kg per litre");
        Number grid = boxed(terms.gridKgCo2PerKwh());
        set(Setting.GRID_CARBON, "Carbon dioxide of electricity", grid, Look.FACTOR, "kg per kWh");
        Number carbon = terms.carbonPricePerTonne().orElse(null);
        set(Setting.CARBON_PRICE, "Price of carbon dioxide", carbon, Look.MONEY, "per tonne; blank: none");
        set(Setting.TAX_RATE, "Tax rate", terms.taxRate(), Look.PERCENT, "of profits");
    }

    private static Double boxed(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private void set(Setting setting, String label, Number value, Look look, String remark) {
        pen.text(row, 0, label);
        settings.put(setting, number(1, value, look));
        pen.text(row, 2, remark);
        row++;
    }

    private String number(int column, Number value, Look look) {
        if (value == null) {
            return pen.blankInput(row, column, look);
        }
        return pen.input(row, column, value instanceof BigDecimal exact ? exact.doubleValue() : value, look);
    }

    private void section(String title, String... headings) {
        row++;
        pen.bold(row++, 0, title);
        pen.headings(row++, headings);
    }

    /** A phase lasts until the next one begins. */
    private void phases() {
        section("Phases", "Phase", "Begins after (years)", "Lasts until (years)", "Budget", "Number of the phase");
        for (int f = 0; f < lines.phases().size(); f++) {
            Phase phase = lines.phases().get(f);
            boolean last = f == lines.phases().size() - 1;
            pen.text(row, 0, phase.id());
            phases.add(new PhaseCells(
                    pen.fixed(row, 4, f + 1, Look.PLAIN),
                    pen.input(row, 1, phase.year(), Look.PLAIN),
                    pen.formula(row, 2, Look.PLAIN, last ? horizon() : pen.ref(row + 1, 1)),
                    number(3, phase.budget().orElse(null), Look.MONEY)));
            row++;
        }
    }

    private void prices() {
        section("Prices", "Kind", "Item", "Price of one", "Installing one", "Life (years)", "Number of the item");
        for (Item item : lines.items()) {
            pen.text(row, 0, Words.of(item.category()));
            pen.text(row, 1, item.name());
            items.add(new ItemCells(
                    pen.fixed(row, ITEM_NUMBER, items.size() + 1, Look.PLAIN),
                    pen.input(row, 2, item.price(), Look.MONEY),
                    pen.input(row, 3, item.installCost(), Look.MONEY),
                    number(4, boxed(item.lifeYears()), Look.PLAIN)));
            row++;
        }
    }

    private void counts() {
        section(
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

    private void running() {
        section(
                "Every year",
                "Kind",
                "Item",
                "Quantity",
                "Unit",
                "Price of one in the first year",
                "Number of the phase");
        firstRunning = row;
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
            pen.fixed(row, RUNNING_PHASE, line.phase(), Look.PLAIN);
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

    /** Left out where the fleet as a whole orders nothing. */
    private void orders(Scenario scenario) {
        if (lines.orders().isEmpty()) {
            return;
        }
        section(
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
                    pen.input(row, QUANTITY, order.pieces(), Look.PLAIN),
                    own,
                    order.spare() ? pen.formula(row, 4, Look.MONEY, own) : pen.input(row, 4, order.paid(), Look.MONEY),
                    item.map(cells -> pen.formula(
                                    row,
                                    5,
                                    Look.PLAIN,
                                    "IF(ISNUMBER(%s),%s,\"\")".formatted(cells.lifeYears(), cells.lifeYears())))
                            .orElseGet(() ->
                                    number(5, boxed(new Catalog(scenario).lifeYears(order.name())), Look.PLAIN))));
            pen.fixed(row, PHASE_NUMBER, order.phase(), Look.PLAIN);
            row++;
        }
    }

    private void depreciation(List<Double> shares) {
        section("Depreciation", "Year after the payment", "Share written off");
        for (int year = 1; year <= YearCells.LAST_YEAR; year++) {
            pen.fixed(row, 0, year, Look.PLAIN);
            writeOffs.add(number(1, year <= shares.size() ? shares.get(year - 1) : null, Look.PERCENT));
            row++;
        }
    }

    String horizon() {
        return settings.get(Setting.HORIZON);
    }

    String rate() {
        return settings.get(Setting.RATE);
    }

    String electricityGrowth() {
        return settings.get(Setting.ELECTRICITY_GROWTH);
    }

    String petrolPrice() {
        return settings.get(Setting.PETROL_PRICE);
    }

    String petrolGrowth() {
        return settings.get(Setting.PETROL_GROWTH);
    }

    String petrolCarbon() {
        return settings.get(Setting.PETROL_CARBON);
    }

    String gridCarbon() {
        return settings.get(Setting.GRID_CARBON);
    }

    String carbonPrice() {
        return settings.get(Setting.CARBON_PRICE);
    }

    String taxRate() {
        return settings.get(Setting.TAX_RATE);
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
