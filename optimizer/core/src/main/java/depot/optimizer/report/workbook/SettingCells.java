package depot.optimizer.report.workbook;

import depot.optimizer.report.workbook.SheetPen.Look;
import depot.optimizer.scenario.FinanceTerms;
import depot.optimizer.scenario.Scenario;
import java.util.EnumMap;
import java.util.Map;

/** Cells that hold for the whole plan: horizon, rates, petrol, carbon, taxes. */
final class SettingCells {

    private final SheetPen pen;
    private final Map<Setting, String> settings = new EnumMap<>(Setting.class);
    private int row;

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

    /** Writes them from a row on. */
    SettingCells(SheetPen pen, int firstRow, Scenario scenario) {
        this.pen = pen;
        row = firstRow;
        rates(scenario);
        petrolAndTaxes(scenario.finance());
    }

    /** The row below them. */
    int nextRow() {
        return row;
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
        Number grid = SheetPen.boxed(terms.gridKgCo2PerKwh());
        set(Setting.GRID_CARBON, "Carbon dioxide of electricity", grid, Look.FACTOR, "kg per kWh");
        Number carbon = terms.carbonPricePerTonne().orElse(null);
        set(Setting.CARBON_PRICE, "Price of carbon dioxide", carbon, Look.MONEY, "per tonne; blank: none");
        set(Setting.TAX_RATE, "Tax rate", terms.taxRate(), Look.PERCENT, "of profits");
    }

    private void set(Setting setting, String label, Number value, Look look, String remark) {
        pen.text(row, 0, label);
        settings.put(setting, pen.inputOrBlank(row, 1, value, look));
        pen.text(row, 2, remark);
        row++;
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
}
