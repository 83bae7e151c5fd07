package depot.optimizer.check;

import depot.optimizer.dictionary.FinanceTables.Depreciation;
import depot.optimizer.dictionary.Settings;
import depot.optimizer.scenario.DepreciationShare;
import depot.optimizer.scenario.FinanceTerms;
import java.util.List;
import java.util.OptionalDouble;

/** Makes the records of finance out of sound rows. */
final class FinanceRecords {
    private FinanceRecords() {}

    static DepreciationShare depreciationShare(TypedRow row) {
        return new DepreciationShare(
                row.get(Depreciation.SCHEDULE), row.get(Depreciation.YEAR), row.get(Depreciation.SHARE));
    }

    static FinanceTerms terms(TypedRow settings, List<DepreciationShare> schedules) {
        return new FinanceTerms(
                settings.get(Settings.TAX_RATE),
                settings.find(Settings.DEPRECIATION),
                settings.find(Settings.PETROL_PRICE_PER_LITRE),
                settings.get(Settings.PETROL_PRICE_GROWTH),
                settings.get(Settings.PETROL_KG_CO2_PER_LITRE),
                settings.find(Settings.GRID_KG_CO2_PER_KWH)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                settings.find(Settings.CARBON_PRICE_PER_TONNE),
                schedules);
    }
}
