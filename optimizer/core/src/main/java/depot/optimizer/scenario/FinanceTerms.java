package depot.optimizer.scenario;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What finance reckons with beside horizon and discount rate. None of it changes what is bought.
 *
 * @param taxRate on profits, 0 to below 1
 * @param depreciation name of the schedule by which purchases are written off, empty: they are not
 * @param petrolPricePerLitre empty: what crews' petrol costs is not parted into fuel and upkeep
 * @param petrolPriceGrowth a year
 * @param petrolKgCo2PerLitre carbon dioxide from burning a litre of petrol, in kg
 * @param gridKgCo2PerKwh carbon dioxide from making a kilowatt-hour of electricity, in kg
 * @param carbonPricePerTonne of carbon dioxide, empty: it has none
 * @param schedules rows of all depreciation schedules
 */
public record FinanceTerms(
        double taxRate,
        Optional<String> depreciation,
        Optional<BigDecimal> petrolPricePerLitre,
        double petrolPriceGrowth,
        double petrolKgCo2PerLitre,
        OptionalDouble gridKgCo2PerKwh,
        Optional<BigDecimal> carbonPricePerTonne,
        List<DepreciationShare> schedules) {

    /** Carbon dioxide from a litre of petrol: 8887 g per US gallon (EPA-420-F-11-041, seen), in kg. */
    public static final double PETROL_KG_CO2_PER_LITRE = 2.3477;

    /** No tax, no growth, no prices. */
    public static final FinanceTerms NONE = new FinanceTerms(
            0,
            Optional.empty(),
            Optional.empty(),
            0,
            PETROL_KG_CO2_PER_LITRE,
            OptionalDouble.empty(),
            Optional.empty(),
            List.of());

    /** Copies the list. */
    public FinanceTerms {
        schedules = List.copyOf(schedules);
    }

    /** Shares that the chosen schedule writes off, from the year after the payment on; empty without a schedule. */
    public List<Double> writeOffs() {
        return schedules.stream()
                .filter(row -> depreciation.equals(Optional.of(row.schedule())))
                .sorted((a, b) -> Integer.compare(a.year(), b.year()))
                .map(DepreciationShare::share)
                .toList();
    }
}
