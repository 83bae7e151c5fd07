package depot.optimizer.sweep.change;

import depot.optimizer.dictionary.ChangeKind;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.Season;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Changes scenarios. */
public final class Changes {
    private Changes() {}

    /** The scenario after changes, one after the other. */
    public static Scenario apply(Scenario scenario, List<Change> changes) {
        Scenario changed = scenario;
        for (Change change : changes) {
            changed = apply(changed, change);
        }
        return changed;
    }

    /** The scenario after one change. */
    public static Scenario apply(Scenario scenario, Change change) {
        ScenarioCopy copy = new ScenarioCopy(scenario);
        switch (change.kind()) {
            case ITEM_PRICE -> PriceChanges.items(copy, change);
            case BUILDING_PRICE -> PriceChanges.building(copy, change.value());
            case BUDGET -> CouplingChanges.budget(copy, change);
            case ALL_BUDGETS -> CouplingChanges.budgets(copy, change.value());
            case ALL_MONEY -> PriceChanges.all(copy, change);
            case ELECTRICITY_PRICE -> PriceChanges.energy(copy, change);
            case DEMAND_PRICE -> PriceChanges.demand(copy, change);
            case ELECTRICITY_GROWTH ->
                copy.electricityPriceGrowth = change.value().doubleValue();
            case PETROL_PRICE -> PriceChanges.petrol(copy, change.value());
            case SHORTAGE_PRICE -> copy.shortageCostPerKwh = Optional.of(change.value());
            case HORIZON -> copy.horizonYears = change.value().intValueExact();
            case DISCOUNT_RATE -> copy.discountRate = change.value().doubleValue();
            case DEMAND_QUANTILE -> copy.demandQuantile = change.value().doubleValue();
            case DEMAND_SPREAD -> copy.demandSpread = change.value().doubleValue();
            case WORK_HOURS -> CrewChanges.workHours(copy, change);
            case CREW_COPIES -> CrewChanges.copies(copy, change);
            case PACK_HEALTH -> copy.packHealth = change.value().doubleValue();
            case PACK_LIFE -> EquipmentChanges.packLife(copy, change);
            case SEASON_CAPACITY -> EquipmentChanges.seasonCapacity(copy, change);
            case CHARGE_TIMES -> EquipmentChanges.chargeTimes(copy, change);
            case CIRCUIT_AMPS -> SiteChanges.circuitAmps(copy, change);
            case SUPPLY_AMPS -> SiteChanges.supplyAmps(copy, change);
            case PLACES -> SiteChanges.places(copy, change);
            case LUNCH_MINUTES -> RouteChanges.lunch(copy, change);
            case LATE_RETURN -> RouteChanges.lateReturn(copy, change);
        }
        return copy.scenario();
    }

    /** The value that leaves a scenario as it is; empty: it depends on which of several is meant. */
    public static OptionalDouble neutral(Scenario scenario, ChangeKind kind, String of) {
        return switch (kind.form()) {
            case FACTOR -> OptionalDouble.of(1);
            case ADDED, WHOLE_ADDED -> OptionalDouble.of(0);
            case VALUE, WHOLE_VALUE -> present(scenario, kind, of);
        };
    }

    private static OptionalDouble present(Scenario scenario, ChangeKind kind, String of) {
        return switch (kind) {
            case BUDGET -> CouplingChanges.presentBudget(scenario.coupling(), of);
            case ELECTRICITY_GROWTH -> OptionalDouble.of(scenario.electricityPriceGrowth());
            case SHORTAGE_PRICE ->
                scenario.shortageCostPerKwh()
                        .map(price -> OptionalDouble.of(price.doubleValue()))
                        .orElse(OptionalDouble.empty());
            case HORIZON -> OptionalDouble.of(scenario.horizonYears());
            case DISCOUNT_RATE -> OptionalDouble.of(scenario.discountRate());
            case DEMAND_QUANTILE -> OptionalDouble.of(scenario.demandQuantile());
            case DEMAND_SPREAD -> OptionalDouble.of(scenario.demandSpread());
            case PACK_HEALTH -> OptionalDouble.of(scenario.packHealth());
            case SEASON_CAPACITY ->
                only(
                        scenario.seasons().stream()
                                .filter(season -> of.isEmpty() || season.id().equals(of))
                                .toList(),
                        Season::packCapacityFactor);
            default -> OptionalDouble.empty();
        };
    }

    private static <T> OptionalDouble only(List<T> rows, ToDoubleFunction<T> value) {
        List<Double> values = rows.stream().map(value::applyAsDouble).distinct().toList();
        return values.size() == 1 ? OptionalDouble.of(values.get(0)) : OptionalDouble.empty();
    }
}
