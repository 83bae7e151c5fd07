package depot.optimizer.generate;

import depot.optimizer.dictionary.DepotTables.BaseLoads;
import depot.optimizer.dictionary.DepotTables.Circuits;
import depot.optimizer.dictionary.DepotTables.Depots;
import depot.optimizer.dictionary.TariffTables.Tariffs;
import depot.optimizer.dictionary.TariffTables.Terms;
import depot.optimizer.generate.TableText.Row;
import depot.optimizer.scenario.BaseLoad;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.Scenario;
import depot.optimizer.scenario.TariffTerms;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tables of the depots, their wiring and their tariffs. */
final class SiteText {
    private SiteText() {}

    static List<TableText> tables(Scenario scenario) {
        return List.of(
                TableText.of(Depots.TABLE, scenario.depots(), SiteText::depot),
                TableText.of(Circuits.TABLE, scenario.circuits(), SiteText::circuit),
                TableText.of(BaseLoads.TABLE, scenario.baseLoads(), SiteText::baseLoad),
                TableText.of(Tariffs.TABLE, scenario.priceBands(), SiteText::priceBand),
                TableText.of(Terms.TABLE, scenario.tariffTerms(), SiteText::terms));
    }

    private static void depot(Row row, Depot depot) {
        row.put(Depots.DEPOT, depot.id())
                .put(Depots.NAME, depot.name())
                .put(Depots.REGION, depot.region())
                .put(Depots.LATITUDE, boxed(depot.latitude()))
                .put(Depots.LONGITUDE, boxed(depot.longitude()))
                .put(Depots.TARIFF, depot.tariff())
                .put(Depots.SUPPLY_VOLTS, depot.supplyVolts())
                .put(Depots.SUPPLY_PHASES, depot.supplyPhases())
                .put(Depots.SUPPLY_AMPS, depot.supplyAmps())
                .put(Depots.PLACES, depot.places())
                .put(Depots.STAFFED_FROM, depot.staffedFromMinute())
                .put(Depots.STAFFED_TO, depot.staffedToMinute())
                .put(Depots.SWAP_MINUTES, depot.swapMinutes());
        if (depot.upgradeOffered()) {
            row.put(Depots.SUPPLY_UPGRADE_AMPS, depot.supplyUpgradeAmps())
                    .put(Depots.SUPPLY_UPGRADE_COST, depot.supplyUpgradeCost());
        }
    }

    private static void circuit(Row row, Circuit circuit) {
        row.put(Circuits.CIRCUIT, circuit.id())
                .put(Circuits.DEPOT, circuit.depot())
                .put(Circuits.VOLTS, circuit.volts())
                .put(Circuits.PHASES, circuit.phases())
                .put(Circuits.BREAKER_AMPS, circuit.breakerAmps())
                .put(Circuits.OUTLETS, circuit.outlets())
                .put(Circuits.PLUG_AMPS, boxed(circuit.plugAmps()))
                .put(Circuits.CONTINUOUS_FACTOR, circuit.continuousFactor())
                .put(Circuits.POWER_FACTOR, circuit.powerFactor())
                .put(Circuits.INSTALL_COST, circuit.installCost());
    }

    private static void baseLoad(Row row, BaseLoad load) {
        row.put(BaseLoads.DEPOT, load.depot())
                .put(BaseLoads.CIRCUIT, load.circuit())
                .put(BaseLoads.DAYS, load.days())
                .put(BaseLoads.FROM, load.fromMinute())
                .put(BaseLoads.TO, load.toMinute())
                .put(BaseLoads.AMPS, load.amps());
    }

    private static void priceBand(Row row, PriceBand band) {
        row.put(Tariffs.TARIFF, band.tariff())
                .put(Tariffs.SEASON, band.season())
                .put(Tariffs.DAYS, band.days())
                .put(Tariffs.FROM, band.fromMinute())
                .put(Tariffs.TO, band.toMinute())
                .put(Tariffs.PRICE_PER_KWH, band.pricePerKwh());
    }

    private static void terms(Row row, TariffTerms terms) {
        row.put(Terms.TARIFF, terms.tariff())
                .put(Terms.STANDING_PER_DAY, terms.standingPerDay())
                .put(Terms.DEMAND_PRICE_PER_KW_MONTH, terms.demandPricePerKwMonth())
                .put(Terms.DEMAND_MINUTES, terms.demandMinutes());
    }

    static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
