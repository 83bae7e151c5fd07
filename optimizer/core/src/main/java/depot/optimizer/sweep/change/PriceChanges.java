package depot.optimizer.sweep.change;

import depot.optimizer.scenario.ChargerType;
import depot.optimizer.scenario.Circuit;
import depot.optimizer.scenario.Crew;
import depot.optimizer.scenario.CrewBase;
import depot.optimizer.scenario.Depot;
import depot.optimizer.scenario.PackType;
import depot.optimizer.scenario.PowerBankType;
import depot.optimizer.scenario.PriceBand;
import depot.optimizer.scenario.SharingUnitType;
import depot.optimizer.scenario.TariffTerms;
import java.math.BigDecimal;

/** Changes of prices. Amounts stay exact: they are multiplied as decimals. */
final class PriceChanges {
    private PriceChanges() {}

    static void items(ScenarioCopy copy, Change change) {
        BigDecimal factor = change.value();
        copy.packTypes = copy.packTypes.stream()
                .map(type -> change.isAbout(type.id()) ? priced(type, factor) : type)
                .toList();
        copy.chargerTypes = copy.chargerTypes.stream()
                .map(type -> change.isAbout(type.id()) ? priced(type, factor, BigDecimal.ONE) : type)
                .toList();
        copy.sharingUnitTypes = copy.sharingUnitTypes.stream()
                .map(type -> change.isAbout(type.id()) ? priced(type, factor, BigDecimal.ONE) : type)
                .toList();
        copy.powerBankTypes = copy.powerBankTypes.stream()
                .map(type -> change.isAbout(type.id()) ? priced(type, factor) : type)
                .toList();
        CouplingChanges.tiers(copy, change);
    }

    static void building(ScenarioCopy copy, BigDecimal factor) {
        copy.chargerTypes = copy.chargerTypes.stream()
                .map(type -> priced(type, BigDecimal.ONE, factor))
                .toList();
        copy.sharingUnitTypes = copy.sharingUnitTypes.stream()
                .map(type -> priced(type, BigDecimal.ONE, factor))
                .toList();
        copy.circuits =
                copy.circuits.stream().map(circuit -> priced(circuit, factor)).toList();
        copy.depots = copy.depots.stream().map(depot -> priced(depot, factor)).toList();
    }

    static void all(ScenarioCopy copy, Change change) {
        BigDecimal factor = change.value();
        items(copy, change);
        building(copy, factor);
        energy(copy, change);
        petrol(copy, factor);
        CouplingChanges.budgets(copy, factor);
        CouplingChanges.moves(copy, factor);
        copy.tariffTerms = copy.tariffTerms.stream()
                .map(terms -> priced(terms, factor, factor))
                .toList();
        copy.crewBases = copy.crewBases.stream()
                .map(base -> new CrewBase(
                        base.crew(), base.depot(), base.costPerYear().multiply(factor)))
                .toList();
        copy.shortageCostPerKwh = copy.shortageCostPerKwh.map(factor::multiply);
    }

    static void energy(ScenarioCopy copy, Change change) {
        copy.priceBands = copy.priceBands.stream()
                .map(band -> change.isAbout(band.tariff()) ? priced(band, change.value()) : band)
                .toList();
    }

    static void demand(ScenarioCopy copy, Change change) {
        copy.tariffTerms = copy.tariffTerms.stream()
                .map(terms -> change.isAbout(terms.tariff()) ? priced(terms, BigDecimal.ONE, change.value()) : terms)
                .toList();
    }

    static void petrol(ScenarioCopy copy, BigDecimal factor) {
        copy.crews = copy.crews.stream()
                .map(crew -> new Crew(
                        crew.id(),
                        crew.depot(),
                        crew.packPlaces(),
                        crew.payloadKg(),
                        crew.vehicleWatts(),
                        crew.petrolCostPerYear().multiply(factor)))
                .toList();
    }

    private static PackType priced(PackType type, BigDecimal factor) {
        return new PackType(
                type.id(),
                type.family(),
                type.capacityWh(),
                type.usableShare(),
                type.weightKg(),
                type.price().multiply(factor),
                type.cycleLife(),
                type.calendarYears());
    }

    private static ChargerType priced(ChargerType type, BigDecimal piece, BigDecimal install) {
        return new ChargerType(
                type.id(),
                type.bays(),
                type.chargingAtOnce(),
                type.plateWatts(),
                type.efficiency(),
                type.places(),
                type.portable(),
                type.weightKg(),
                type.price().multiply(piece),
                type.installCost().multiply(install),
                type.lifeYears());
    }

    private static SharingUnitType priced(SharingUnitType type, BigDecimal piece, BigDecimal install) {
        return new SharingUnitType(
                type.id(),
                type.outlets(),
                type.amps(),
                type.priorityOutlets(),
                type.price().multiply(piece),
                type.installCost().multiply(install),
                type.lifeYears());
    }

    private static PowerBankType priced(PowerBankType type, BigDecimal factor) {
        return new PowerBankType(
                type.id(),
                type.energyWh(),
                type.outputWatts(),
                type.efficiency(),
                type.rechargeWatts(),
                type.rechargeMinutes(),
                type.weightKg(),
                type.price().multiply(factor),
                type.lifeYears());
    }

    private static Circuit priced(Circuit circuit, BigDecimal factor) {
        return new Circuit(
                circuit.id(),
                circuit.depot(),
                circuit.volts(),
                circuit.phases(),
                circuit.breakerAmps(),
                circuit.outlets(),
                circuit.plugAmps(),
                circuit.continuousFactor(),
                circuit.powerFactor(),
                circuit.installCost().multiply(factor));
    }

    private static Depot priced(Depot depot, BigDecimal factor) {
        return SiteChanges.with(
                depot,
                depot.supplyAmps(),
                depot.places(),
                depot.supplyUpgradeCost().multiply(factor));
    }

    private static PriceBand priced(PriceBand band, BigDecimal factor) {
        return new PriceBand(
                band.tariff(),
                band.season(),
                band.days(),
                band.fromMinute(),
                band.toMinute(),
                band.pricePerKwh().multiply(factor));
    }

    private static TariffTerms priced(TariffTerms terms, BigDecimal standing, BigDecimal demand) {
        return new TariffTerms(
                terms.tariff(),
                terms.standingPerDay().multiply(standing),
                terms.demandPricePerKwMonth().multiply(demand),
                terms.demandMinutes());
    }
}
