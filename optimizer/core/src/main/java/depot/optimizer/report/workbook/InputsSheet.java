package depot.optimizer.report.workbook;

import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.report.table.Words;
import depot.optimizer.report.workbook.PlanLines.Count;
import depot.optimizer.report.workbook.PlanLines.Item;
import depot.optimizer.report.workbook.PlanLines.Running;
import depot.optimizer.report.workbook.SheetPen.Look;
import depot.optimizer.scenario.FinanceTerms;
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
    private static final int QUANTITY = 2;
    private static final int YEARLY_PRICE = 4;

    private final SheetPen pen;
    private final PlanLines lines;
    private final Map<Setting, String> settings = new LinkedHashMap<>();
    private final List<ItemCells> items = new ArrayList<>();
    private final List<CountCells> counts = new ArrayList<>();
    private final List<String> writeOffs = new ArrayList<>();
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

    InputsSheet(Workbook workbook, Scenario scenario, PlanLines lines) {
        this.lines = lines;
        pen = new SheetPen(workbook, NAME);
        pen.width(0, 32);
        pen.width(1, 26);
        for (int column = 2; column <= ITEM_NUMBER; column++) {
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
        prices();
        counts();
        running();
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
        section("Pieces", "Depot", "Item", "Kind", "To buy", "Owned already", "Number of the item");
        firstCount = row;
        for (Count count : lines.counts()) {
            Item item = lines.items().get(count.item());
            pen.text(row, 0, count.depot());
            pen.text(row, 1, item.name());
            pen.text(row, 2, Words.of(item.category()));
            counts.add(new CountCells(
                    pen.input(row, 3, count.bought(), Look.PLAIN), pen.input(row, 4, count.owned(), Look.PLAIN)));
            pen.fixed(row, ITEM_NUMBER, count.item() + 1, Look.PLAIN);
            row++;
        }
    }

    private void running() {
        section("Every year", "Kind", "Item", "Quantity", "Unit", "Price of one in the first year");
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

    /** Pieces of an item to buy, over all depots. */
    String bought(ItemCells item) {
        return pieces(item, 3);
    }

    /** Pieces of an item that are owned already, over all depots. */
    String owned(ItemCells item) {
        return pieces(item, 4);
    }

    private String pieces(ItemCells item, int column) {
        int last = firstCount + counts.size() - 1;
        String numbers = pen.range(firstCount, ITEM_NUMBER, last, ITEM_NUMBER);
        return "SUMIF(%s,%s,%s)".formatted(numbers, item.number(), pen.range(firstCount, column, last, column));
    }

    /** What a kind of cost comes to in the first year. */
    String yearlyCost(Category category) {
        return block(category, QUANTITY)
                .map(quantities -> "SUMPRODUCT(%s,%s)"
                        .formatted(quantities, block(category, YEARLY_PRICE).orElseThrow()))
                .orElse("0");
    }

    /** How much of something comes in a year. */
    String yearlyQuantity(Category category) {
        return block(category, QUANTITY).map("SUM(%s)"::formatted).orElse("0");
    }

    /** Rows of one kind stand together; empty: there are none. */
    private Optional<String> block(Category category, int column) {
        List<Category> kinds = lines.running().stream().map(Running::category).toList();
        int first = kinds.indexOf(category);
        return first < 0
                ? Optional.empty()
                : Optional.of(
                        pen.range(firstRunning + first, column, firstRunning + kinds.lastIndexOf(category), column));
    }
}
