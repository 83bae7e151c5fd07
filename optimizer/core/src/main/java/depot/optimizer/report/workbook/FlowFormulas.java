package depot.optimizer.report.workbook;

import depot.optimizer.finance.FlowKind;
import depot.optimizer.plan.CostLine.Category;
import depot.optimizer.report.workbook.YearCells.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** The formula of each kind of flow in each year; finance.CashFlow reckons alike. */
final class FlowFormulas {

    private static final String NOTHING = "0";

    /** Flows that are costs or savings of their year for taxes. */
    private static final List<FlowKind> TAXED = List.of(
            FlowKind.PACK_REPLACEMENT,
            FlowKind.ENERGY,
            FlowKind.DEMAND,
            FlowKind.STANDING,
            FlowKind.CREW_BASES,
            FlowKind.SHORTAGE,
            FlowKind.PETROL_SAVED,
            FlowKind.CARBON_SAVED);

    /** The sheets that the flows are made from. */
    record Sheets(PurchasesSheet purchases, OrdersSheet orders, PetrolSheet petrol, ItemsSheet items) {}

    private final YearCells cells;
    private final InputsSheet inputs;
    private final int phases;
    private final Sheets sheets;

    FlowFormulas(YearCells cells, InputsSheet inputs, int phases, Sheets sheets) {
        this.cells = cells;
        this.inputs = inputs;
        this.phases = phases;
        this.sheets = sheets;
    }

    String of(FlowKind kind, int year) {
        return switch (kind) {
            case PURCHASES -> bought(year, sheets.purchases().purchases(cells.at(Row.YEAR, year)));
            case FLEET_PURCHASES -> bought(year, sheets.orders().purchases(cells.at(Row.YEAR, year)));
            case INSTALLATION -> bought(year, sheets.purchases().installation(cells.at(Row.YEAR, year)));
            case VALUE_AT_END -> ifLast(year, valueAtEnd());
            case TAX_SHIELD -> inputs.settings().taxRate() + "*" + cells.at(Row.WRITTEN_OFF, year);
            default -> year == 0 ? NOTHING : later(kind, year);
        };
    }

    private String later(FlowKind kind, int year) {
        return switch (kind) {
            case REPLACEMENTS -> "-" + sheets.items().replacements(year);
            case PACK_REPLACEMENT -> running(Category.PACK_WEAR, year);
            case ENERGY -> running(Category.ENERGY, year) + electricityPrice(year);
            case DEMAND -> running(Category.DEMAND, year) + electricityPrice(year);
            case STANDING -> running(Category.STANDING, year) + electricityPrice(year);
            case CREW_BASES -> running(Category.CREW_BASES, year);
            case PETROL -> running(Category.PETROL, year);
            case SHORTAGE -> running(Category.SHORTAGE, year);
            case PETROL_EITHER_WAY -> "-" + cells.at(FlowKind.PETROL, year);
            case PETROL_SAVED -> petrolSaved(year);
            case CARBON_SAVED -> carbonSaved(year);
            case TAX_ON_SAVING -> taxOnSaving(year);
            case PURCHASES, FLEET_PURCHASES, INSTALLATION, VALUE_AT_END, TAX_SHIELD ->
                throw new IllegalArgumentException(kind.name());
        };
    }

    private String ifLast(int year, String formula) {
        return "IF(%s=%s,%s,0)"
                .formatted(cells.at(Row.YEAR, year), inputs.settings().horizon(), formula);
    }

    private String bought(int year, String paid) {
        return "-%s*%s".formatted(cells.at(Row.WITHIN, year), paid);
    }

    private String valueAtEnd() {
        String items = sheets.items().valueAtEnd();
        return sheets.orders().valueAtEnd().map(orders -> items + "+" + orders).orElse(items);
    }

    private String running(Category category, int year) {
        return "-(%s)".formatted(ofPhases(year, phase -> inputs.running().yearlyCost(category, phase)));
    }

    /** What comes in the phase that a year belongs to; phases without anything are left out. */
    private String ofPhases(int year, IntFunction<Optional<String>> yearly) {
        List<String> parts = new ArrayList<>();
        for (int phase = 1; phase <= phases; phase++) {
            String within = cells.inPhase(phase, year);
            yearly.apply(phase).ifPresent(amount -> parts.add(within + "*" + amount));
        }
        return parts.isEmpty() ? NOTHING : String.join("+", parts);
    }

    private String electricityPrice(int year) {
        return "*" + grown(inputs.settings().electricityGrowth(), year);
    }

    private static String grown(String growth, int year) {
        return "(1+%s)^%d".formatted(growth, year - 1);
    }

    private String petrolSaved(int year) {
        PetrolSheet petrol = sheets.petrol();
        return ofPhases(
                year,
                phase -> Optional.of("(%s*%s+%s)"
                        .formatted(
                                petrol.fuel(phase),
                                grown(inputs.settings().petrolGrowth(), year),
                                petrol.upkeep(phase))));
    }

    private String carbonSaved(int year) {
        return "%s/1000*(%s)"
                .formatted(
                        inputs.settings().carbonPrice(),
                        ofPhases(
                                year,
                                phase -> Optional.of("(%s*%s-%s*%s)"
                                        .formatted(
                                                sheets.petrol().litres(phase),
                                                inputs.settings().petrolCarbon(),
                                                inputs.running()
                                                        .yearlyQuantity(Category.ENERGY, phase)
                                                        .orElse(NOTHING),
                                                inputs.settings().gridCarbon()))));
    }

    /** Of the year's saving, and at the end of what everything is worth more than is left in the books. */
    private String taxOnSaving(int year) {
        List<String> taxed = TAXED.stream().map(kind -> cells.at(kind, year)).toList();
        String inBooks = "SUM(%s)-SUM(%s)".formatted(cells.all(Row.BOOKS), cells.all(Row.WRITTEN_OFF));
        String gain = "IF(SUM(%s)>0,%s-(%s),0)"
                .formatted(cells.all(Row.BACKWARDS), cells.at(FlowKind.VALUE_AT_END, year), inBooks);
        return "-%s*(%s+%s)".formatted(inputs.settings().taxRate(), String.join("+", taxed), ifLast(year, gain));
    }

    /** What goes into the books in a year, to be written off from the next one on. */
    String intoBooks(int year) {
        return "-(%s+%s+%s+%s)"
                .formatted(
                        cells.at(FlowKind.PURCHASES, year),
                        cells.at(FlowKind.FLEET_PURCHASES, year),
                        cells.at(FlowKind.INSTALLATION, year),
                        cells.at(FlowKind.REPLACEMENTS, year));
    }

    /** The share of year 40 stands at year 0, that of year 1 at year 39: in the order of what they are multiplied with. */
    String shareBackwards(int year) {
        return year == YearCells.LAST_YEAR ? NOTHING : "0+" + inputs.writeOff(YearCells.LAST_YEAR - year);
    }

    /** What went into the books in the years 0 to y - 1, times the shares of the years y to 1 after that. */
    String writtenOff(int year) {
        if (year == 0) {
            return NOTHING;
        }
        String shares = cells.years(Row.BACKWARDS, YearCells.LAST_YEAR - year, YearCells.LAST_YEAR - 1);
        String books = cells.years(Row.BOOKS, 0, year - 1);
        return "%s*SUMPRODUCT(%s,%s)".formatted(cells.at(Row.WITHIN, year), books, shares);
    }
}
