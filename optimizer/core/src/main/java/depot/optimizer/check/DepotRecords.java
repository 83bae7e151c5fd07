package depot.optimizer.check;

import depot.optimizer.dictionary.DepotTables.BaseLoads;
import depot.optimizer.dictionary.DepotTables.Circuits;
import depot.optimizer.dictionary.DepotTables.Depots;
import depot.optimizer.dictionary.TariffTables.Tariffs;
import depot.optimizer.dictionary.TariffTables.Terms;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.TariffTerms;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes the records of depots, their wiring and their tariffs out of sound rows. */
final class DepotRecords {
    /** Packs are moved hourly in a staffed depot whose table does not say otherwise. */
    private static final int DEFAULT_SWAP_MINUTES = 60;

    private DepotRecords() {}

    static Depot depot(TypedRow row) {
        Optional<Integer> staffedFrom = row.find(Depots.STAFFED_FROM);
        return new Depot(
                row.get(Depots.DEPOT),
                row.get(Depots.NAME),
                row.find(Depots.REGION),
                number(row.find(Depots.LATITUDE)),
                number(row.find(Depots.LONGITUDE)),
                row.get(Depots.TARIFF),
                row.get(Depots.SUPPLY_VOLTS),
                row.get(Depots.SUPPLY_PHASES),
                row.get(Depots.SUPPLY_AMPS),
                row.get(Depots.PLACES),
                staffedFrom,
                row.find(Depots.STAFFED_TO),
                staffedFrom.map(from -> row.find(Depots.SWAP_MINUTES).orElse(DEFAULT_SWAP_MINUTES)),
                row.find(Depots.SUPPLY_UPGRADE_AMPS).orElse(0.0),
                row.find(Depots.SUPPLY_UPGRADE_COST).orElse(BigDecimal.ZERO));
    }

    static Circuit circuit(TypedRow row) {
        return new Circuit(
                row.get(Circuits.CIRCUIT),
                row.get(Circuits.DEPOT),
                row.get(Circuits.VOLTS),
                row.get(Circuits.PHASES),
                row.get(Circuits.BREAKER_AMPS),
                row.get(Circuits.OUTLETS),
                number(row.find(Circuits.PLUG_AMPS)),
                row.get(Circuits.CONTINUOUS_FACTOR),
                row.get(Circuits.POWER_FACTOR),
                row.get(Circuits.INSTALL_COST));
    }

    static BaseLoad baseLoad(TypedRow row) {
        return new BaseLoad(
                row.get(BaseLoads.DEPOT),
                row.find(BaseLoads.CIRCUIT),
                row.get(BaseLoads.DAYS),
                row.get(BaseLoads.FROM),
                row.get(BaseLoads.TO),
                row.get(BaseLoads.AMPS));
    }

    static PriceBand priceBand(TypedRow row) {
        return new PriceBand(
                row.get(Tariffs.TARIFF),
                row.find(Tariffs.SEASON),
                row.get(Tariffs.DAYS),
                row.get(Tariffs.FROM),
                row.get(Tariffs.TO),
                row.get(Tariffs.PRICE_PER_KWH));
    }

    static TariffTerms tariffTerms(TypedRow row) {
        return new TariffTerms(
                row.get(Terms.TARIFF),
                row.get(Terms.STANDING_PER_DAY),
                row.get(Terms.DEMAND_PRICE_PER_KW_MONTH),
                row.get(Terms.DEMAND_MINUTES));
    }

    static OptionalDouble number(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
